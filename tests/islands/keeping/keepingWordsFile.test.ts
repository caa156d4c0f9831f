/** Words of basket, comparison and links: each key that is asked for has a text, and each text is asked for. */
import { globSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { shop } from '../../configurator/shop.ts';

const GROUPS = ['showing', 'link', 'opened', 'damaged', 'aside', 'compare', 'basket'];

const text = globSync(['src/islands/{keeping,basket}/*', 'src/pages/basket.astro'])
  .map((name) => readFileSync(name, 'utf8'))
  .join('\n');

const grouped = new RegExp(`^(?:${GROUPS.join('|')})\\.`);
const keys = Object.keys(shop.words).filter((key) => grouped.test(key));

/** Keys as written, whole or with a part that is filled in; two files speak in one group alone. */
const asked = [...text.matchAll(/['`]([a-z][A-Za-z0-9.-]*(?:\$\{[^}]*\})?)['`]/g)].map(([, key = '']) => key);
const pattern = (key: string) => {
  const parts = key.split(/\$\{[^}]*\}/).map((part) => part.replaceAll('.', '\\.'));
  return parts.join('[A-Za-z-]+');
};
const patterns = asked
  .filter((key) => grouped.test(key) && !key.startsWith('${'))
  .map((key) => new RegExp(`^${pattern(key)}$`));
const ofGroup = (group: string) => (key: string) => `${group}.${key}`;
const spoken = new Set([...asked.map(ofGroup('showing')), ...asked.map(ofGroup('basket')), ...rowNames()]);

/** Rows of the comparison are named without their group. */
function rowNames(): readonly string[] {
  return asked.map(ofGroup('compare'));
}

it('asks for no key without a text', () => {
  const whole = [...text.matchAll(/\bsay\(\s*'([a-z][A-Za-z0-9.-]*)'/g)].map(([, key = '']) => key);
  expect(whole.length).toBeGreaterThan(40);
  expect(whole.filter((key) => !Object.hasOwn(shop.words, key))).toEqual([]);
});

it('has no text that nothing asks for', () => {
  expect(keys.filter((key) => !spoken.has(key) && !patterns.some((one) => one.test(key)))).toEqual([]);
});

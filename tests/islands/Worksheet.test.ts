/** The worksheet and its words: each key that is asked for has a text, and each text is asked for. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { shop } from '../configurator/shop.ts';

const sources = ['src/islands', 'src/islands/entry', 'src/configurator', 'src/configurator/entry'].flatMap(
  (folder) =>
    readdirSync(folder)
      .filter((name) => /\.tsx?$/.test(name))
      .map((name) => readFileSync(`${folder}/${name}`, 'utf8')),
);
// The engine names places on a lens in the words of the worksheet.
const text = [...sources, readFileSync('src/quote/shownPlace.ts', 'utf8')].join('\n');

/** Keys as written in full, with or without the prefix that `t` adds. */
const literal = new Set(
  [...text.matchAll(/['`](?:worksheet\.)?([a-z][A-Za-z0-9.-]*)['`]/g)].map(([, key = '']) => key),
);

/** Keys with a part that is filled in, as patterns. */
const filled = [...text.matchAll(/`(?:worksheet\.)?([a-z][A-Za-z0-9.-]*\$\{[^`]*?)`/g)].map(
  ([, key = '']) => {
    const pattern = key
      .replace(/\$\{(?:[^{}]|\{[^}]*\})*\}/g, '\u0000')
      .replace(/[.]/g, '\\.')
      .replaceAll('\u0000', '[A-Za-z0-9.-]+');
    return new RegExp(`^${pattern}$`);
  },
);
filled.push(/^(?:right|left)(?:Letter)?$/, /^figure\.[A-Za-z]+$/, /^fault\.[a-z-]+$/);

// Drawings have words of their own, and are tested with them.
const keys = Object.keys(shop.words)
  .filter((key) => key.startsWith('worksheet.') && !key.startsWith('worksheet.drawing.'))
  .map((key) => key.slice('worksheet.'.length));

it('asks for no key without a text', () => {
  const asked = [...text.matchAll(/\bt\(\s*'([^']+)'/g)].map(([, key = '']) => key);
  expect(asked.length).toBeGreaterThan(40);
  expect(asked.filter((key) => !keys.includes(key))).toEqual([]);
});

it('has no text that nothing asks for', () => {
  expect(keys.filter((key) => !literal.has(key) && !filled.some((pattern) => pattern.test(key)))).toEqual([]);
});

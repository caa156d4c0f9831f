/** The shop in its second language: the same pages under /fr/, in French words, figures and money. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { findAccessibilityFaults } from './accessibility.ts';
import { watchFaults } from './browser.ts';
import { builtShop } from './server.ts';
import { browser, server } from './visit.ts';
import { untilAlive, worksheetOn } from './worksheetPage.ts';

const pages = readdirSync(builtShop, { recursive: true, encoding: 'utf8' })
  .map((name) => name.replaceAll('\\', '/'))
  .filter((name) => name.endsWith('index.html'));
const read = (name: string) => readFileSync(`${builtShop}/${name}`, 'utf8');
const FIRST = /<html[^>]* lang="([^"]+)"/;

/** Languages and addresses that a page names as its other versions. */
const alternates = (html: string) =>
  new Map([...html.matchAll(/hreflang="([^"]+)" href="https:\/\/[^/"]+([^"]*)"/g)].map((m) => [m[1], m[2]]));

describe('the languages of the pages', () => {
  it('are both there for every page that has another version, and each names the other', () => {
    const named = pages.map((name) => ({ name, to: alternates(read(name)) })).filter(({ to }) => to.size > 0);
    expect(named.length).toBeGreaterThan(60);
    for (const { name, to } of named) {
      expect([...to.keys()].sort(), name).toEqual(['en', 'fr-CA', 'x-default']);
      expect(to.get('x-default'), name).toBe(to.get('en'));
      for (const language of ['en', 'fr-CA']) {
        const other = read(`${to.get(language)?.slice(1)}index.html`);
        expect(FIRST.exec(other)?.[1], name).toBe(language);
        expect(alternates(other), name).toEqual(to);
      }
    }
  });

  it('keep to themselves: no link of a French page leads to an English one but the switch', () => {
    const strays = pages
      .filter((name) => name.startsWith('fr/'))
      .flatMap((name) =>
        [...read(name).matchAll(/<a\b[^>]*\shref="(\/[^"#]*)[^"]*"[^>]*>/g)]
          .filter(([tag, to = '']) => !to.startsWith('/fr/') && !tag.includes('hreflang') && to.endsWith('/'))
          .map(([, to]) => `${name}: ${to}`),
      );
    expect(strays).toEqual([]);
  });
});

it('has French words whose signs and units never stand alone on a line', () => {
  const texts = ['content/words/fr-CA', 'content/translations/fr-CA'].flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(?:yaml|md)$/.test(name))
      .map((name) => ({ name, lines: readFileSync(`${folder}/${name}`, 'utf8').split('\n') })),
  );
  // A no-break space, not a space and not nothing, stands beside : and « » (OQLF, Banque de dépannage linguistique),
  // and before a unit; before ; and ? it is the shop's own habit.
  const loose = /\u0020(?:[;?!»%]|: )|\S[;?!](?=[\s"]|$)|[^\u00a0]»|«[^\u00a0]|[\d}]\u0020(?:mm|D|g|Δ)\b/;
  const found = texts.flatMap(({ name, lines }) =>
    lines
      .filter((line) => loose.test(line.replace(/^\s*#.*/, '').replaceAll(/\u00a0[;?!]/g, '')))
      .map((line) => `${name}: ${line.trim()}`),
  );
  expect(texts.length).toBeGreaterThan(20);
  expect(found).toEqual([]);
});

it('judges and prices a pair in French, and the switch keeps page and fragment', async () => {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  const sheet = worksheetOn(page, server.origin);
  await page.goto(`${server.origin}/fr/frames/dunlin/`);
  await untilAlive(page);
  await sheet.typeAll({
    'right.sphere': '-3,25',
    'right.cylinder': '-0,75',
    'right.axis': '170',
    'left.sphere': '-2,75',
    'pd.right': '31,5',
    'pd.left': '32',
  });
  await page.locator('.ws-lenses').waitFor();
  const ticket = await sheet.ticket();
  expect(ticket).toContain('−3,25 −0,75 × 170');
  expect(ticket).toMatch(/\d,\d\s?mm/);
  expect(ticket).toMatch(/\d,\d{2}\s\$\sUS/);
  expect(ticket).not.toMatch(/\d\.\d+\s?(?:mm|g|D)\b/);
  expect(await page.locator('#worksheet-root').textContent()).not.toMatch(/\S:\s/);
  expect(sheet.faults).toEqual([]);
  expect(await findAccessibilityFaults(page)).toEqual([]);

  // What a link to a pair says stays in the address, and goes along.
  await page.goto(`${server.origin}/fr/frames/dunlin/#p1;m=polycarbonate`);
  await page.reload();
  await untilAlive(page);
  await page.locator('#sh-opened').waitFor();
  await page.locator('a[data-language="en"]').click();
  await page.waitForURL(`${server.origin}/frames/dunlin/#p1;m=polycarbonate`);
  await page.close();
}, 60_000);

it('has French pages without an accessibility fault', async () => {
  const page = await browser.newPage({ viewport: { width: 320, height: 800 } });
  const faults = watchFaults(page, server.origin);
  for (const path of [
    '/fr/',
    '/fr/frames/',
    '/fr/lenses/tints/photochromic-grey/',
    '/fr/measuring/',
    '/fr/basket/',
  ]) {
    await page.goto(`${server.origin}${path}`);
    expect(await findAccessibilityFaults(page), path).toEqual([]);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide, path).toBeLessThanOrEqual(320);
  }
  expect(faults).toEqual([]);
  await page.close();
}, 60_000);

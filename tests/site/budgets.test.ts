/** Weights of the built pages as a browser first loads them, gzipped, against what README promises. */
import { readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { builtShop } from './server.ts';

/** Thousand bytes, gzipped. */
const budget = { scriptKb: 32, htmlKb: 35, cssKb: 12, dataKb: 25, laterPartKb: 25, sealingKb: 35 };
/** The owner's page has the whole shop and every paper in it, so that it asks for nothing more: thousand bytes, gzipped. */
const workroom = { page: 'workroom/index.html', scriptKb: 150, htmlKb: 75, cssKb: 14, partKb: 75 };

const files = readdirSync(builtShop, { recursive: true, encoding: 'utf8' }).map((name) =>
  name.replaceAll('\\', '/'),
);
const pages = files.filter((name) => name.endsWith('.html'));
const read = (name: string) => readFileSync(`${builtShop}/${name}`, 'utf8');
const kb = (text: string) => gzipSync(text, { level: 9 }).length / 1000;
const sum = (parts: readonly number[]) => parts.reduce((a, b) => a + b, 0);

/** Built files that a page names in an attribute, without the slash at their start. */
function named(html: string, attribute: string, ending: string): string[] {
  const all = [...html.matchAll(new RegExp(`\\s${attribute}="/([^"]+\\.${ending})"`, 'g'))];
  return [...new Set(all.map(([, name = '']) => name))];
}

const staticImport = /(?:from|import)\s*["'`]\.\/([^"'`]+\.js)["'`]/g;
const importOnDemand = /import\(\s*["'`]\.\/([^"'`]+\.js)["'`]/g;

function imports(script: string, form: RegExp): string[] {
  const folder = script.slice(0, script.lastIndexOf('/') + 1);
  return [...read(script).matchAll(form)].map(([, name = '']) => folder + name);
}

/** A script and all that it imports at its start. */
function withImports(script: string, seen = new Set<string>()): Set<string> {
  if (seen.has(script)) return seen;
  seen.add(script);
  for (const name of imports(script, staticImport)) withImports(name, seen);
  return seen;
}

/**
 * Weight of the scripts of a page: inline ones, linked ones, islands with their renderer, their imports, and what
 * the linked ones load by themselves as the form comes near. What those load in turn is asked for by the shopper.
 */
function scriptKb(html: string): number {
  const inline = [
    ...html.matchAll(
      /<script\b(?![^>]*\s(?:src|type="application\/(?:ld\+)?json"))[^>]*>([\s\S]*?)<\/script>/g,
    ),
  ];
  const attributes = ['src', 'component-url', 'renderer-url', 'href'];
  const entries = attributes.flatMap((attribute) => named(html, attribute, 'js'));
  const loaded = [...entries, ...entries.flatMap((entry) => imports(entry, importOnDemand))];
  const scripts = new Set(loaded.flatMap((script) => [...withImports(script)]));
  return sum([...inline.map(([, text = '']) => kb(text)), ...[...scripts].map((name) => kb(read(name)))]);
}

const hasIsland = (html: string) =>
  /<astro-island\b|id="(?:worksheet|list|basket|order|workroom)-root"/.test(html);
// A page that has moved sends on what stands behind the #, which takes a few lines of script.
const hasMoved = (name: string) => /<meta http-equiv="refresh"/.test(read(name));
const framePages = pages.filter((name) => /^(?:fr\/)?frames\/.+\/index\.html$/.test(name) && !hasMoved(name));

describe('a built page', () => {
  it('without an island has no script at all', () => {
    // What search engines are told is data in a script element: nothing runs it.
    const script = /<script\b(?![^>]*\stype="application\/ld\+json")/;
    const withScript = pages.filter(
      (name) => !hasIsland(read(name)) && !hasMoved(name) && script.test(read(name)),
    );
    expect(withScript).toEqual([]);
  });

  it('has no inline style and no inline handler, which its security policy would refuse', () => {
    const refused = pages.flatMap((name) =>
      [...read(name).matchAll(/<[a-z][^>]*\s(?:style|on[a-z]+)="[^>]*>/g)].map(([tag]) => `${name}: ${tag}`),
    );
    expect(refused).toEqual([]);
  });
});

describe('each page of a frame, gzipped', () => {
  it('exists', () => {
    expect(framePages.length).toBeGreaterThan(0);
  });

  it.each([
    ['HTML', budget.htmlKb, kb],
    ['script', budget.scriptKb, scriptKb],
    ['CSS', budget.cssKb, (html: string) => sum(named(html, 'href', 'css').map((name) => kb(read(name))))],
  ])('keeps its %s within %d kB', (_, limitKb, weigh) => {
    const over = framePages
      .map((name) => ({ name, kb: weigh(read(name)) }))
      .filter((page) => page.kb > limitKb);
    expect(over).toEqual([]);
  });
});

describe('the page of the order, gzipped', () => {
  const html = read('order/index.html');

  it('keeps its script within 32 kB with the part that it loads at once; the rest waits until it is needed', () => {
    const [entry = ''] = named(html, 'src', 'js');
    const atOnce = imports(entry, importOnDemand).filter((name) => name.includes('/atTheForm.'));
    expect(atOnce).toHaveLength(1);
    const scripts = new Set([entry, ...atOnce].flatMap((name) => [...withImports(name)]));
    expect(sum([...scripts].map((name) => kb(read(name))))).toBeLessThanOrEqual(budget.scriptKb);
  });

  it.each([
    ['HTML', budget.htmlKb, kb(html)],
    ['CSS', budget.cssKb, sum(named(html, 'href', 'css').map((name) => kb(read(name))))],
  ])('keeps its %s within %d kB', (_, limitKb, found) => {
    expect(found).toBeLessThanOrEqual(limitKb);
  });
});

describe('what pages load later', () => {
  it('is at most 25 kB a script, the sealing of orders 35 kB', () => {
    const limit = (name: string) => {
      if (/\/workroom\./.test(name)) return workroom.partKb;
      return read(name).includes('age-encryption.org/v1') ? budget.sealingKb : budget.laterPartKb;
    };
    const over = files
      .filter((name) => name.endsWith('.js') && kb(read(name)) > limit(name))
      .map((name) => `${name}: ${kb(read(name)).toFixed(1)} kB`);
    expect(over).toEqual([]);
  });

  it('is at most 25 kB of shop data, one file for each language', () => {
    const data = files.filter((name) => /^shop-data\/.+\.json$/.test(name));
    expect(data.filter((name) => kb(read(name)) > budget.dataKb)).toEqual([]);
  });
});

describe("the workroom's page, gzipped", () => {
  it.each([
    ['HTML', workroom.htmlKb, kb],
    ['script', workroom.scriptKb, scriptKb],
    ['CSS', workroom.cssKb, (html: string) => sum(named(html, 'href', 'css').map((name) => kb(read(name))))],
  ])('keeps its %s within %d kB', (_, limitKb, weigh) => {
    expect(weigh(read(workroom.page))).toBeLessThanOrEqual(limitKb);
  });
});

/** Weights of the list of frames with its form, gzipped, against what README promises. */
import { readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { builtShop } from './server.ts';

/** Thousand bytes, gzipped. `dataPer100Kb`: what judging a hundred frames loads besides the shop's data. */
const budget = { firstScriptKb: 3, formScriptKb: 32, cssKb: 12, dataPer100Kb: 32 };

const read = (name: string) => readFileSync(`${builtShop}/${name}`, 'utf8');
const kb = (text: string) => gzipSync(text, { level: 9 }).length / 1000;
const sum = (parts: readonly number[]) => parts.reduce((a, b) => a + b, 0);
const html = read('frames/index.html');

/** A script, what it imports at its start, and on demand where `later`. */
function withImports(script: string, later: boolean, seen = new Set<string>()): Set<string> {
  if (seen.has(script)) return seen;
  seen.add(script);
  const folder = script.slice(0, script.lastIndexOf('/') + 1);
  const form = later
    ? /(?:from|import)\s*\(?\s*["'`]\.\/([^"'`]+\.js)["'`]/g
    : /(?:from|import)\s*["'`]\.\/([^"'`]+\.js)["'`]/g;
  for (const [, name = ''] of read(script).matchAll(form)) withImports(folder + name, later, seen);
  return seen;
}

const entries = [...html.matchAll(/<script\b[^>]*\ssrc="\/([^"]+\.js)"/g)].map(([, name = '']) => name);
const inline = [
  ...html.matchAll(/<script\b(?![^>]*\s(?:src|type="application\/json"))[^>]*>([\s\S]*?)<\/script>/g),
];
const weigh = (later: boolean) =>
  sum(inline.map(([, text = '']) => kb(text))) +
  sum([...new Set(entries.flatMap((name) => [...withImports(name, later)]))].map((name) => kb(read(name))));

describe('the page of all frames, gzipped', () => {
  it('loads at most 3 kB of script before somebody uses its form', () => {
    expect(entries.length + inline.length).toBeGreaterThan(0);
    expect(weigh(false)).toBeLessThanOrEqual(budget.firstScriptKb);
  });

  it('loads at most 32 kB of script for its form', () => {
    expect(weigh(true)).toBeGreaterThan(weigh(false));
    expect(weigh(true)).toBeLessThanOrEqual(budget.formScriptKb);
  });

  it('has at most 12 kB of CSS', () => {
    const sheets = [...html.matchAll(/\shref="\/([^"]+\.css)"/g)].map(([, name = '']) => name);
    expect(sum(sheets.map((name) => kb(read(name))))).toBeLessThanOrEqual(budget.cssKb);
  });

  it('judges a hundred frames by at most 32 kB of their data', () => {
    const [name = ''] = readdirSync(`${builtShop}/frames-data`);
    const text = read(`frames-data/${name}`);
    const count = (JSON.parse(text) as unknown[]).length;
    expect((kb(text) / count) * 100).toBeLessThanOrEqual(budget.dataPer100Kb);
  });
});

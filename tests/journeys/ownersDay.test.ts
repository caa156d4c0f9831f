/**
 * A day of an owner: every command as it is typed, on a copy of the demonstration shop. Nothing is written but what
 * was asked for, and in the evening the shop has no fault.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { printFaults } from '../../src/catalogue/printFaults.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const desk = mkdtempSync(join(tmpdir(), 'day-'));
const shop = join(desk, 'content');
cpSync(join(root, 'content'), shop, { recursive: true });
afterAll(() => rmSync(desk, { recursive: true, force: true }));

function type(command: string, words: readonly string[], answers: readonly string[] = []) {
  const line = [`src/commands/${command}.ts`, ...words, '--shop', shop];
  const input = answers.map((answer) => `${answer}\n`).join('');
  const run = spawnSync(process.execPath, line, { cwd: root, input, encoding: 'utf8' });
  return { status: run.status, said: `${run.stdout}${run.stderr}` };
}

const text = (path: string) => readFileSync(join(shop, path), 'utf8');
const filesOf = () =>
  new Map(
    readdirSync(shop, { recursive: true, encoding: 'utf8' })
      .filter((path) => statSync(join(shop, path)).isFile())
      .map((path) => [path.replaceAll('\\', '/'), text(path)]),
  );

/** Paths of files that are new or different. */
function changedSince(before: ReadonlyMap<string, string>): string[] {
  return [...filesOf()].flatMap(([path, now]) => (before.get(path) === now ? [] : [path])).sort();
}

function given(name: string, lines: readonly string[]): string {
  writeFileSync(join(desk, name), `${lines.join('\n')}\n`);
  return join(desk, name);
}

const isText = (name: string) => name.endsWith('.md');

const reading = () => {
  const read = loadCatalogue(shop);
  if (!read.ok) throw new Error(printFaults(read.faults));
  return read.catalogue;
};

describe("the owner's day", () => {
  it('begins with a new frame, asked for on the terminal, slips and all', () => {
    const before = filesOf();
    const typed = [
      'Lapwing',
      '',
      'saltmarch',
      'saltmarsh',
      'Thin steel, deep enough for progressives',
      '139',
      'Steel',
      '',
    ];
    const measures = ['48,5', '48.5', '40.5', '21', 'panto', '', '145', 'pads', '14', 'Slate', '#4a4f55', ''];
    const { status, said } = type('new', ['frame'], [...typed, ...measures]);
    expect(said).toContain('Did you mean saltmarsh?');
    expect(said).toContain('found the text "48,5". Write 48.5');
    expect([status, changedSince(before)]).toEqual([0, ['frames/lapwing.md']]);
    expect(reading().frames.find(({ id }) => id === 'lapwing')).toMatchObject({
      priceMinor: 13900,
      massG: 14,
    });
  });

  it('goes on with a colourway for it and a promotion for its collection', () => {
    const colour = [
      '--frame',
      'lapwing',
      '--name',
      'Brass',
      '--front',
      '#b08d4a',
      '--difference',
      '8',
      '--yes',
    ];
    expect(type('new', ['colourway', ...colour]).status).toBe(0);
    const offer = [
      '--title',
      'Spring tide',
      '--sentence',
      '10 % off every Saltmarsh frame',
      '--percent',
      '10',
    ];
    const days = ['--starts', '2027-03-01', '--ends', '2027-03-21', '--collections', 'saltmarsh', '--yes'];
    expect(type('new', ['promotion', ...offer, ...days]).status).toBe(0);
    const { frames, promotions } = reading();
    const lapwing = frames.find(({ id }) => id === 'lapwing');
    expect(lapwing?.colourways.map(({ priceDifferenceMinor }) => priceDifferenceMinor)).toEqual([0, 800]);
    expect(promotions.find(({ id }) => id === 'spring-tide')).toMatchObject({
      ends: '2027-03-21',
      gift: { kind: 'percent', sharePpm: 100_000, on: 'frame' },
      scope: { collections: ['saltmarsh'] },
    });
  });

  it('changes prices from a list: first looked at, then done, remarks and layout kept', () => {
    const before = filesOf();
    const list = given('prices.csv', ['id;new price', 'lapwing;145,00', 'hard;15,5', 'dunlin;$ 1.119,00']);
    const map = given('map.yaml', ['decimal: ","', 'columns: { id: id, new price: price }']);
    const words = ['prices', list, '--mapping', map];
    expect(type('import', [...words, '--dry-run']).said).toContain('-price: "14.00"\n+price: "15.50"');
    expect(changedSince(before)).toEqual([]);
    expect(type('import', words).status).toBe(0);
    expect(changedSince(before)).toEqual([
      'frames/dunlin.md',
      'frames/lapwing.md',
      'lenses/coatings/hard.md',
    ]);
    const lines = (path: string, all = filesOf()) => (all.get(path) ?? '').split('\n');
    for (const path of changedSince(before)) {
      const differ = lines(path).filter((line, at) => line !== lines(path, before)[at]);
      expect(differ.map((line) => line.replace(/\d.*\d/, '…'))).toEqual(['price: "…"']);
    }
  });

  it('brings in nothing of a table with three wrong rows, and is told of all three', () => {
    const before = filesOf();
    const table = readFileSync(join(root, 'tests/fixtures/import/frames.csv'), 'utf8').split(/\r?\n/);
    const rows = [
      table[0] ?? '',
      ...Array.from({ length: 40 }, (_, at) => (table[4] ?? '').replace('siskin', `siskin-${at}`)),
    ];
    const wrong = rows.map((row, at) =>
      at === 7
        ? row.replace(';46;', ';460;')
        : at === 19
          ? row.replace('Round', 'Rund')
          : at === 33
            ? row.replace('#4f5b3a', 'moss')
            : row,
    );
    const mapping = ['--mapping', 'tests/fixtures/import/frames.yaml'];
    const { status, said } = type('import', ['frames', given('frames.csv', wrong), ...mapping]);
    expect([status, changedSince(before)]).toEqual([1, []]);
    expect(
      [...said.matchAll(/frames\.csv:(\d+):\d+ ([^:]+):/g)].map(([, line, column]) => `${line} ${column}`),
    ).toEqual(['8 Eye size', '20 Shape', '34 Color']);
    expect(said).toContain('3 faults. Nothing was written.');
    expect(type('import', ['frames', given('frames.csv', rows), ...mapping]).status).toBe(0);
    expect(changedSince(before)).toHaveLength(40);
  });

  it.each([
    [
      'shop.yaml',
      'timeZone: America/New_York',
      'timeZone: America/NewYork',
      'Did you mean America/New_York?',
    ],
    ['shop.yaml', 'timeZone: America/New_York', 'timeZone: EST', 'do not follow the change of the clocks'],
    ['shop.yaml', 'otherLanguages: [fr-CA]', 'otherLanguages: [fr_CA]', 'Write fr-CA.'],
    ['frames/lapwing.md', 'price: "145.00"', 'price: 145', 'Put it in quotes: "145.00".'],
    ['frames/knot.md', 'massG:', 'mass:', 'Did you mean "massG"?'],
    ['outlines/stint-49.yaml', '24.26,', '24.26;', 'to do:'],
    ['outlines/stint-49.yaml', '24.26, 24.32', '24,26, 24.32', 'a decimal comma makes two radii of one'],
    ['lenses/designs/office.md', 'kind: office', 'kind: ofice', 'Did you mean office?'],
    ['lenses/materials/polycarbonate.md', 'abbe: 30', 'abbe: "30"', 'Write 30, without quotes'],
    ['lenses/tints/clear.md', 'transmittance: 1,', 'transmittance: 100,', 'a number from 0.001 to 1'],
    ['lenses/tints/clear.md', 'transmittance: 1,', 'transmittance: 95%,', 'Write 0.95.'],
    ['lenses/coatings/hard.md', 'hard: true', 'hard: yes', 'Write true.'],
    ['promotions/spring-tide.md', '2027-03-21', '2027-03-32', 'a day of the calendar'],
    ['promotions/spring-tide.md', '2027-03-21', '2027-02-29', 'That month has 28 days.'],
    ['pages/returns.md', 'menu: null', 'menu: last', 'a whole number from 1 to 100'],
    ['pages/cautions.md', '../measuring/', '../measurings/', 'Did you mean /measuring/?'],
    ['words/en/price.yaml', 'Tint: {tint}', 'Tint: {tint', 'a text whose braces hold the name of a slot'],
  ])('shows a slip in %s (%s as %s) in its line, with what to do', (path, passage, by, hint) => {
    const before = text(path);
    expect(before).toContain(passage);
    writeFileSync(join(shop, path), before.replace(passage, by));
    const read = loadCatalogue(shop);
    writeFileSync(join(shop, path), before);
    const said = read.ok ? 'no fault' : printFaults(read.faults);
    expect(said).toContain(`${path}:${before.slice(0, before.indexOf(passage)).split('\n').length}:`);
    expect(said).toContain(hint);
  });

  it('ends with a shop without faults', () => {
    const { frames, promotions } = reading();
    expect(frames).toHaveLength(readdirSync(join(root, 'content/frames')).filter(isText).length + 41);
    expect(promotions).toHaveLength(readdirSync(join(root, 'content/promotions')).filter(isText).length + 1);
  });
});

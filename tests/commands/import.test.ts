import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { writeTraceRecord } from '../../src/optics/traceWrite.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'import-'));
const shop = join(folder, 'content');
cpSync(join(root, 'content'), shop, { recursive: true });
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const bring = (...words: string[]) => answering('', ...words);

/** The command with what is typed while it runs. */
function answering(input: string, ...words: string[]) {
  const line = ['src/commands/import.ts', ...words, '--shop', shop];
  const run = spawnSync(process.execPath, line, { cwd: root, input, encoding: 'utf8' });
  return {
    status: run.status,
    out: run.stdout.replaceAll(folder, ''),
    error: run.stderr.replaceAll(folder, ''),
  };
}

const fixture = (name: string) => join('tests/fixtures/import', name);
const fixtureText = (name: string) =>
  readFileSync(join(root, fixture(name)), 'utf8').replaceAll('\r\n', '\n');

/** A file beside the shop. */
function given(name: string, text: string): string {
  writeFileSync(join(folder, name), text);
  return join(folder, name);
}

const filesOf = () =>
  readdirSync(shop, { recursive: true, encoding: 'utf8' })
    .filter((path) => statSync(join(shop, path)).isFile())
    .map((path) => [path, readFileSync(join(shop, path), 'utf8')]);

describe('npm run import -- prices', () => {
  const mapping = ['--mapping', fixture('prices.yaml')];

  it('shows the difference first, and touches nothing but prices', () => {
    const before = new Map(filesOf() as [string, string][]);
    const { status, out } = bring('prices', fixture('prices.csv'), ...mapping, '--dry-run');
    expect(status).toBe(0);
    expect(out).toMatchInlineSnapshot(`
      "--- /content/frames/dunlin.md
      +++ /content/frames/dunlin.md
      @@ line 6
      -price: "119.00"
      +price: "125.00"

      --- /content/frames/stint.md
      +++ /content/frames/stint.md
      @@ line 6
      -price: "225.00"
      +price: "231.50"

      --- /content/lenses/designs/progressive-long.md
      +++ /content/lenses/designs/progressive-long.md
      @@ line 6
      -price: "195.00"
      +price: "199.00"

      --- /content/lenses/materials/polycarbonate.md
      +++ /content/lenses/materials/polycarbonate.md
      @@ line 33
      -    price: "79.00"
      +    price: "81.00"

      Dry run, nothing was written. Files: 0 new, 4 changed. 4 prices change, 1 stay as they are.
      "
    `);
    expect(new Map(filesOf() as [string, string][])).toEqual(before);
    expect(bring('prices', fixture('prices.csv'), ...mapping).status).toBe(0);
    const changes = (filesOf() as [string, string][]).filter(([path, text]) => before.get(path) !== text);
    expect(changes.map(([path, text]) => [path, text.replace(/"(125|231.5|199|81)\.?0*"/, '""')])).toEqual(
      changes.map(([path]) => [
        path,
        before.get(path)?.replace(/price: "(119|225|195|79)\.00"/, 'price: ""'),
      ]),
    );
    expect(changes).toHaveLength(4);
  });

  it('writes none of the rows when one is wrong, and names every one that is', () => {
    const before = filesOf();
    const list = given(
      'wrong.csv',
      'id,price\nstint,230.00\ndunlyn,99\nknot,ninety\nstint,231\nnone,1.005\n',
    );
    const { status, out, error } = bring('prices', list, ...mapping);
    expect([status, out]).toEqual([1, '']);
    expect(error).toMatchInlineSnapshot(`
      "/wrong.csv:3:1 id: this names something that the shop does not have [unknown-reference]
        3 | dunlyn,99
          | ^^^^^^
        expected: the id of a frame or option of this shop
        found:    "dunlyn"
        to do:    Did you mean "dunlin"?

      /wrong.csv:4:6 price: this is not a price [wrong-price]
        4 | knot,ninety
          |      ^^^^^^
        expected: a price in USD with 2 digits after the point, in quotes, such as "149.00"
        found:    "ninety"
        to do:    Write digits and a point only.

      /wrong.csv:5:1 id: this id is used twice [duplicate-id]
        5 | stint,231
          | ^^^^^
        expected: each id once
        found:    it again, after line 2
        to do:    Remove one of the two rows.

      /wrong.csv:6:6 price: this price has too many decimals [too-many-decimals]
        6 | none,1.005
          |      ^^^^^
        expected: a price in USD with 2 digits after the point, in quotes, such as "149.00"
        found:    "1.005"
        to do:    Round it: "1.00" or "1.01".

      4 faults. Nothing was written.
      "
    `);
    expect(filesOf()).toEqual(before);
  });
});

describe('npm run import -- outline', () => {
  const round = { radiiMm: Array.from({ length: 360 }, () => 22) };
  const record = writeTraceRecord({
    entries: [{ label: 'JOB', fields: ['7'] }],
    traces: [{ side: 'right', type: 'F', mode: 'equal', outline: round }],
  });

  it('writes an outline that the shop reads, and says what its size measures', () => {
    const { status, out } = bring('outline', given('ring.trc', record), '--id', 'ring');
    expect(status).toBe(0);
    expect(out).toContain('a: 44, b: 44, ed: 44, outline: { traced: ring }');
    const tern = join(shop, 'frames/tern.md');
    const text = readFileSync(tern, 'utf8');
    writeFileSync(
      tern,
      text.replace(
        /sizes:[\s\S]*?\n---/,
        'sizes:\n  - { id: 44-18, a: 44, b: 44, dbl: 18, ed: 44, temple: 140, bridge: pads, outline: { traced: ring } }\n---',
      ),
    );
    const reading = loadCatalogue(shop);
    writeFileSync(tern, text);
    const outline = reading.ok
      ? reading.catalogue.frames.find(({ id }) => id === 'tern')?.sizes[0]?.outline
      : null;
    expect(outline).toMatchObject({ origin: 'traced' });
    expect(Math.max(...(outline?.radiiMm ?? [0]))).toBeCloseTo(22, 2);
  });

  it('is refused with the line that is wrong, and never over one that is there', () => {
    const spoilt = record.replace('R=2200;2200', 'R=2200;22oo');
    expect(bring('outline', given('spoilt.trc', spoilt), '--id', 'spoilt').error).toMatchInlineSnapshot(`
      "/spoilt.trc:3:1 this is not the outline of a lens [bad-trace]
        3 | R=2200;22oo;2200;2200;2200;2200;2200;2200;2200;2200
          | ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
        expected: hundredths of a millimetre
        found:    22oo
        to do:    Send the trace again from the tracer.

      One fault. Nothing was written.
      "
    `);
    expect(bring('outline', given('ring.trc', record), '--id', 'stint-49').error).toContain(
      '[there-already]',
    );
    expect(bring('outline', given('ring.trc', record)).error).toContain('--id is missing');
  });
});

describe('npm run import -- frames', () => {
  const mapping = ['--mapping', fixture('frames.yaml')];

  it('writes frames of several sizes and colourways that pass every check', () => {
    const { status, out } = bring('frames', fixture('frames.csv'), ...mapping);
    expect([status, out.split('\n')[0]]).toEqual([0, 'Files: 2 new, 0 changed. 2 frames from 4 rows.']);
    const reading = loadCatalogue(shop);
    const lapwing = reading.ok ? reading.catalogue.frames.find(({ id }) => id === 'lapwing') : null;
    expect(lapwing).toMatchObject({
      priceMinor: 13900,
      colourways: [{ code: 'slate' }, { code: 'brass' }],
      sizes: [
        { id: '48-21', bMm: 40.5, bridge: 'pads' },
        { id: '51-21', edMm: 53.7 },
      ],
    });
  });

  it('says what the mapping lacks once, not in every row', () => {
    const lacking = given('lacking.yaml', fixtureText('frames.yaml').replace(/ {2}comesFitted:.*\n/, ''));
    const fresh = given('fresh.csv', fixtureText('frames.csv').replace(/^(lapwing|siskin)/gm, '$1-2'));
    const { error } = bring('frames', fresh, '--mapping', lacking);
    expect(error).toContain('write comesFitted below fixed.');
    expect(error).toContain('One fault. Nothing was written.');
  });
});

describe('npm run import', () => {
  it('says how it is used', () => {
    expect(bring('--help').out).toContain('npm run import -- prices FILE.csv --mapping FILE.yaml');
    expect(bring('frame', 'x.csv').error).toContain('Did you mean frames?');
    expect(bring('prices', 'nowhere.csv', '--mapping', fixture('prices.yaml')).error).toContain(
      'nowhere.csv cannot be read',
    );
    expect(bring('prices', fixture('prices.csv')).error).toContain('--mapping is missing');
    const typed = `price\nprices\n${fixture('prices.csv')}\nno.yaml\n`;
    const { out, error } = answering(typed, '--dry-run');
    expect(out).toContain('Did you mean prices?');
    expect(error).toContain('no.yaml cannot be read');
    expect(error).toMatch(
      /npm run import -- prices tests\/fixtures\/import\/prices\.csv --shop=\S+ --dry-run\n/,
    );
    expect(answering(`${typed}${fixture('prices.yaml')}\n`, '--dry-run').out).toContain('Dry run');
  });
});

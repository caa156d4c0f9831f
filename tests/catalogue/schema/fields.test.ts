import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { civilDay, colour, idsOrAll, range } from '../../../src/catalogue/schema/fields.ts';
import { parseWith } from '../../../src/catalogue/schema/parse.ts';
import { printedAfter } from '../faultyShop.ts';

describe('a day', () => {
  it('that does not exist is refused', () => {
    expect(
      printedAfter('promotions/autumn.md', 'ends: 2026-11-30', 'ends: 2026-11-31'),
    ).toMatchInlineSnapshot(`
      "
      content/promotions/autumn.md:5:7 ends: this is not a date [wrong-date]
        5 | ends: 2026-11-31
          |       ^^^^^^^^^^
        expected: a day of the calendar as YYYY-MM-DD
        found:    the text "2026-11-31"
        to do:    That month has 30 days. Mend the day, or the month.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('without leading zeros is told the right form', () => {
    expect(
      printedAfter('promotions/autumn.md', 'starts: 2026-11-01', 'starts: 2026-11-1'),
    ).toMatchInlineSnapshot(`
      "
      content/promotions/autumn.md:4:9 starts: this is not a date [wrong-date]
        4 | starts: 2026-11-1
          |         ^^^^^^^^^
        expected: a day of the calendar as YYYY-MM-DD
        found:    the text "2026-11-1"
        to do:    Write 2026-11-01.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('law: it is accepted exactly when the calendar has it', () => {
    const parts = fc.tuple(
      fc.integer({ min: 1900, max: 2100 }),
      fc.integer({ min: 0, max: 13 }),
      fc.integer({ min: 0, max: 32 }),
    );
    fc.assert(
      fc.property(parts, ([year, month, day]) => {
        const text = `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
        const date = new Date(`${text}T00:00:00Z`);
        const exists = !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text);
        expect(parseWith(civilDay(), text).ok).toBe(exists);
      }),
      { numRuns: 500 },
    );
  });
});

describe('a range', () => {
  it('from the larger to the smaller is told to be turned', () => {
    expect(
      printedAfter('lenses/designs/progressive.md', 'sphereD: [-10, 7]', 'sphereD: [7, -10]'),
    ).toMatchInlineSnapshot(`
      "
      content/lenses/designs/progressive.md:9:10 sphereD: these are not in ascending order [not-ascending]
        9 | sphereD: [7, -10]
          |          ^^^^^^^^
        expected: two numbers from -40 to 40 D, the smaller first, such as [-40, 40]
        found:    the list [7, -10]
        to do:    Write [-10, 7].

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('of one number is told to have two', () => {
    expect(
      printedAfter('lenses/designs/progressive.md', 'addD: [0.75, 3.5]', 'addD: [0.75]'),
    ).toMatchInlineSnapshot(`
      "
      content/lenses/designs/progressive.md:11:7 addD: this value is not possible [wrong-value]
        11 | addD: [0.75]
           |       ^^^^^^
        expected: two numbers from 0 to 5 D, the smaller first, such as [0, 5]
        found:    the list [0.75]
        to do:    Write two numbers from 0 to 5 D, the smaller first, such as [0, 5].

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('law: it holds both ends, the smaller first', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20, max: 20 }), fc.integer({ min: -20, max: 20 }), (a, b) => {
        const parsed = parseWith(range(-20, 20, 'D'), [a, b]);
        expect(parsed.ok).toBe(a <= b);
        if (parsed.ok) expect(parsed.value).toEqual({ from: a, to: b });
      }),
    );
  });
});

describe('shorthand', () => {
  it('of a colour is six digits behind a sign, in small letters', () => {
    expect(parseWith(colour(), '#5B3A29')).toEqual({ ok: true, value: '#5b3a29' });
    for (const wrong of ['5b3a29', '#5b3', 'brown', '#5b3a2g'])
      expect(parseWith(colour(), wrong).ok).toBe(false);
  });

  it('of a colour without quotes is a comment, and told so', () => {
    expect(printedAfter('frames/dunlin.md', '"#5b3a1e"', '\n        #5b3a1e\n    ')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:16:31 colourways.0.front: this is the wrong kind of value [wrong-type]
        16 |   - { code: kelp, name: Kelp, front:
           |                               ^^^^^
        expected: a colour such as "#5b3a29", in quotes, or { colour, second, finish }
        found:    nothing
        to do:    Write the value behind the colon, in quotes if it begins with #.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('of ids is a list or the word all', () => {
    expect(parseWith(idsOrAll(), 'all')).toEqual({ ok: true, value: 'all' });
    expect(parseWith(idsOrAll(), ['a', 'b-2'])).toEqual({ ok: true, value: ['a', 'b-2'] });
    for (const wrong of ['none', ['A'], ['a b'], [''], null, {}])
      expect(parseWith(idsOrAll(), wrong).ok).toBe(false);
  });
});

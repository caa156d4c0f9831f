import { describe, expect, it } from 'vitest';
import { file, printed, printedAfter, shopWith, textOf } from '../faultyShop.ts';

describe('a promotion', () => {
  it('ends after it begins', () => {
    expect(
      printedAfter('promotions/autumn.md', 'ends: 2026-11-30', 'ends: 2025-11-30'),
    ).toMatchInlineSnapshot(`
      "
      content/promotions/autumn.md:5:7 ends: the promotion ends before it begins [dates-reversed]
        5 | ends: 2025-11-30
          |       ^^^^^^^^^^
        expected: a last day from 2026-11-01 on, the first day
        found:    2025-11-30
        to do:    Exchange starts and ends, or mend the year.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
    expect(printedAfter('promotions/autumn.md', 'ends: 2026-11-30', 'ends: 2026-11-01')).toBe('no fault');
  });

  it('is told so besides what else is wrong in its file', () => {
    const wrong = (dates: string) =>
      printed(
        shopWith(
          file(
            'promotions/autumn.md',
            textOf('promotions/autumn.md')
              .replace('percent: "10"', 'percent: 10')
              .replace('ends: 2026-11-30', dates),
          ),
        ),
      );
    const told = wrong('ends: 2025-11-30');
    expect(told).toContain('gift.percent');
    expect(told).toContain('[dates-reversed]');
    // What cannot be read, or stands under another name, is not guessed at.
    expect(wrong('ends: 30 November')).not.toContain('[dates-reversed]');
    expect(wrong('end: 2025-11-30')).not.toContain('[dates-reversed]');
  });

  it('has a code of its own while it lasts', () => {
    const autumn = textOf('promotions/autumn.md');
    expect(
      printed(shopWith(file('promotions/late.md', autumn.replace('AUTUMN', 'autumn')))),
    ).toMatchInlineSnapshot(`
      "
      content/promotions/late.md:6:7 code: two promotions answer to this code at the same time [code-taken]
        6 | code: autumn
          |       ^^^^^^
        expected: a code of its own, small and capital letters being the same
        found:    "autumn", which promotions/autumn has as well
        to do:    Change one of the codes, or part the dates.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
    const next = autumn.replace('2026-11-01', '2026-12-01').replace('2026-11-30', '2026-12-31');
    expect(printed(shopWith(file('promotions/late.md', next)))).toBe('no fault');
  });

  it('gives lenses that the shop offers', () => {
    expect(
      printedAfter(
        'promotions/lenses-in.md',
        'design: single-vision, material: standard',
        'design: progressive, material: tough',
      ),
    ).toMatchInlineSnapshot(`
      "
      content/promotions/lenses-in.md:5:23 gift.includedLens: the shop does not offer the lenses that it gives [gift-not-offered]
        5 | gift: { includedLens: { design: progressive, material: tough, coating: hard } }
          |                       ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
        expected: lenses that the shop offers
        found:    progressive is not made in tough
        to do:    Name another material, tint or coating, or extend the lists of these options.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('gives one thing', () => {
    expect(
      printedAfter(
        'promotions/autumn.md',
        'gift: { percent: "10", on: frame }',
        'gift: { percent: "10", on: frames }',
      ),
    ).toMatchInlineSnapshot(`
      "
      content/promotions/autumn.md:8:28 gift.on: this value is not possible [wrong-value]
        8 | gift: { percent: "10", on: frames }
          |                            ^^^^^^
        expected: frame, lenses or pair
        found:    the text "frames"
        to do:    Did you mean frame?

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
    expect(
      printedAfter('promotions/autumn.md', 'gift: { percent: "10", on: frame }', 'gift: 10'),
    ).toMatchInlineSnapshot(`
      "
      content/promotions/autumn.md:8:7 gift: this is the wrong kind of value [wrong-type]
        8 | gift: 10
          |       ^^
        expected: { percent, on }, { amount, on }, { includedLens } or { shipping: free }
        found:    the number 10
        to do:    Write { percent, on }, { amount, on }, { includedLens } or { shipping: free }.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });
});

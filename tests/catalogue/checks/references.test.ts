import { describe, expect, it } from 'vitest';
import { printedAfter } from '../faultyShop.ts';

describe('an id that names nothing', () => {
  it('is told which collection was meant', () => {
    expect(
      printedAfter('frames/dunlin.md', 'collection: harbour', 'collection: habour'),
    ).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:3:13 collection: this names something that the shop does not have [unknown-reference]
        3 | collection: habour
          |             ^^^^^^
        expected: the id of a collection: harbour or marsh
        found:    "habour"
        to do:    Did you mean "harbour"?

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('is told which outlines there are', () => {
    expect(printedAfter('frames/tern.md', 'traced: ring-44', 'traced: square-50')).toMatchInlineSnapshot(`
      "
      content/frames/tern.md:21:95 sizes.0.outline.traced: this names something that the shop does not have [unknown-reference]
        21 | …: 140, bridge: pads, outline: { traced: square-50 } }
           |                                          ^^^^^^^^^
        expected: the id of an outline: ring-44
        found:    "square-50"
        to do:    Use one of these, or add the outline.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('is found in a declared limit', () => {
    expect(
      printedAfter('lenses/materials/tough.md', 'tint: [brown]', 'tint: [brwon]'),
    ).toMatchInlineSnapshot(`
      "
      content/lenses/materials/tough.md:20:25 limits.0.notWith.tint.0: this names something that the shop does not have [unknown-reference]
        20 |   - { notWith: { tint: [brwon] }, because: It takes no dye., level: caution }
           |                         ^^^^^
        expected: the id of a tint: brown or clear
        found:    "brwon"
        to do:    Did you mean "brown"?

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('is found in a gift', () => {
    expect(printedAfter('promotions/lenses-in.md', 'coating: hard', 'coating: soft')).toMatchInlineSnapshot(`
      "
      content/promotions/lenses-in.md:5:77 gift.includedLens.coating: this names something that the shop does not have [unknown-reference]
        5 | gift: { includedLens: { design: single-vision, material: standard, coating: soft } }
          |                                                                             ^^^^
        expected: the id of a coating: hard
        found:    "soft"
        to do:    Use one of these, or add the coating.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('is found in a file that has another fault as well', () => {
    const text = printedAfter('promotions/lenses-in.md', 'joins: [autumn]', 'joins: [autum]\njoinz: []');
    expect(text.match(/\[(?:unknown-\w+)\]/g)).toEqual(['[unknown-reference]', '[unknown-key]']);
  });

  it('is not called unknown because its own file is broken', () => {
    expect(printedAfter('outlines/ring-44.yaml', 'radiiMm:', 'radii:')).not.toContain('unknown-reference');
    expect(printedAfter('shop.yaml', 'collections:', 'kollections: [')).not.toContain('unknown-reference');
  });
});

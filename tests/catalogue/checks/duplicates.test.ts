import { describe, expect, it } from 'vitest';
import { printedAfter } from '../faultyShop.ts';

describe('an id that is used twice', () => {
  it('is found among the sizes of a frame', () => {
    const size =
      '  - { id: 48-20, a: 48, b: 42, dbl: 20, ed: 48.5, temple: 145, bridge: pads, outline: { family: round } }\n';
    expect(printedAfter('frames/dunlin.md', 'notOffered:', `${size}notOffered:`)).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:27:11 sizes.1.id: this id is used twice [duplicate-id]
        27 |   - { id: 48-20, a: 48, b: 42, dbl: 20, ed: 48.5, temple: 145, bridge: pads, outline: { family: roun…
           |           ^^^^^
        expected: an id of its own for each
        found:    "48-20" again, as in item 1 of this list
        to do:    Rename one of the two, or remove it.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('is found among colourways, stock lenses, collections, exemptions and destinations', () => {
    const codes = [
      printedAfter('frames/dunlin.md', 'code: slate', 'code: kelp'),
      printedAfter('shop.yaml', 'id: marsh', 'id: harbour'),
      printedAfter('shop.yaml', 'destinations: [US]', 'destinations: [US, CA, US]'),
    ].map((text) => /:\d+:\d+ (\S+) .*\[duplicate-id\]/.exec(text)?.[1]);
    expect(codes).toEqual(['colourways.1.code:', 'collections.1.id:', 'shipping.0.destinations.2:']);
  });
});

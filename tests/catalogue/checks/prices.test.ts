import { expect, it } from 'vitest';
import { printedAfter } from '../faultyShop.ts';

const pair = (name: string, colourway: string) =>
  `prices:\n  typical:\n    - { name: Plain, frame: ${name}, size: 48-20, colourway: ${colourway}, design: single-vision, material: standard }\ntax:`;

it('a watched pair is made of what the shop has', () => {
  expect(printedAfter('shop.yaml', 'tax:', pair('dunlin', 'kelp'))).toBe('no fault');
  expect(printedAfter('shop.yaml', 'tax:', pair('dunlin', 'kelpp'))).toMatchInlineSnapshot(`
    "
    content/shop.yaml:31:61 prices.typical.0.colourway: this names something that the shop does not have [unknown-reference]
      31 |     - { name: Plain, frame: dunlin, size: 48-20, colourway: kelpp, design: single-vision, material: …
         |                                                             ^^^^^
      expected: a colourway of the shop: kelp or slate
      found:    "kelpp"
      to do:    Did you mean "kelp"?

    1 fault in 1 file of the shop's content. Nothing is built until all are mended.
    "
  `);
  expect(printedAfter('shop.yaml', 'tax:', pair('dunlen', 'kelp'))).toContain('Did you mean "dunlin"?');
});

import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Catalogue } from '../../../src/catalogue/catalogue.ts';
import { loadCatalogue } from '../../../src/catalogue/load.ts';
import { oddPrices } from '../../../src/commands/prices/endings.ts';

let demo: Catalogue;
beforeAll(() => {
  const reading = loadCatalogue('content');
  if (!reading.ok) throw new Error('The demo shop has faults.');
  demo = reading.catalogue;
});

/** The demo's first frame alone, at a price, in a shop with these ends. */
function shopOf(priceMinor: number, endings: readonly number[]): Catalogue {
  const frames = demo.frames.slice(0, 1).map((frame) => ({
    ...frame,
    priceMinor,
    colourways: frame.colourways.slice(0, 1).map((one) => ({ ...one, priceDifferenceMinor: 0 })),
    sizes: frame.sizes.slice(0, 1).map((one) => ({ ...one, priceDifferenceMinor: 0 })),
  }));
  const bare = { ...demo, frames, designs: [], materials: [], tints: [], coatings: [] };
  return { ...bare, priceHabits: { endings, typical: [] } };
}

describe('how prices end', () => {
  it.each([
    ['149.00 ends in 9.00', 14900, [900], null],
    ['148.00 does not', 14800, [900], [13900, 14900]],
    ['0.99 is an end of 12.99', 1299, [99], null],
    ['whole units are an end of 0.00', 1299, [0], [1200, 1300]],
    ['the nearest of several ends is told', 14600, [900, 500], [14500, 14900]],
    ['nothing is below the first price with an end', 300, [900], [null, 900]],
  ] as const)('%s', (_, price, endings, near) => {
    const found = oddPrices(shopOf(price, endings)).map(({ belowMinor, aboveMinor }) => [
      belowMinor,
      aboveMinor,
    ]);
    expect(found).toEqual(near === null ? [] : [near]);
  });

  it('law: the prices that are proposed end as the shop has it, and none between them does', () => {
    const end = fc.integer({ min: 0, max: 999 });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5000 }),
        fc.array(end, { minLength: 1, maxLength: 3 }),
        (price, ends) => {
          const [odd] = oddPrices(shopOf(price, ends));
          if (odd === undefined) return;
          const endsWell = (minor: number) => oddPrices(shopOf(minor, ends)).length === 0;
          expect(odd.aboveMinor).toBeGreaterThan(price);
          expect(endsWell(odd.aboveMinor)).toBe(true);
          if (odd.belowMinor !== null) expect(endsWell(odd.belowMinor)).toBe(true);
          for (let minor = (odd.belowMinor ?? -1) + 1; minor < odd.aboveMinor; minor += 1)
            expect(endsWell(minor)).toBe(false);
        },
      ),
      { numRuns: 30 },
    );
  });
});

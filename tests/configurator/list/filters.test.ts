import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { factsOf } from '../../../src/configurator/list/facts.ts';
import { type Filters, NO_FILTERS, passes, withinOf } from '../../../src/configurator/list/filters.ts';
import { shop } from '../shop.ts';
import { answer, facts } from './list.ts';

const shown = (change: Partial<Filters>, judged?: ReturnType<typeof answer>) =>
  passes(
    facts('f', { widthsMm: [47, 52], colours: ['blue', 'grey'], mounting: 'grooved', priceMinor: 9000 }),
    judged,
    { ...NO_FILTERS, ...change },
  );

describe('a frame', () => {
  it('passes where nothing is asked', () => {
    expect(shown({})).toBe(true);
  });

  it.each<[Partial<Filters>, boolean]>([
    [{ widthFromMm: 52 }, true],
    [{ widthFromMm: 53 }, false],
    [{ widthToMm: 47 }, true],
    [{ widthToMm: 46 }, false],
    [{ widthFromMm: 48, widthToMm: 51 }, false],
    [{ mounting: 'grooved' }, true],
    [{ mounting: 'drilled' }, false],
    [{ colour: 'grey' }, true],
    [{ colour: 'red' }, false],
    [{ priceToMinor: 9000 }, true],
    [{ priceToMinor: 8999 }, false],
  ])('is held against %j: %s', (filters, expected) => {
    expect(shown(filters)).toBe(expected);
  });

  it('is held against the price of the pair once that is known', () => {
    expect(shown({ priceToMinor: 9000 }, answer('f', { totalMinor: 9001 }))).toBe(false);
    expect(shown({ priceToMinor: 9001 }, answer('f', { totalMinor: 9001 }))).toBe(true);
  });

  it('is asked to be makeable only where it was judged so', () => {
    expect(shown({ able: true })).toBe(false);
    expect(shown({ able: true }, answer('f', { verdict: 'care' }))).toBe(true);
    expect(shown({ able: true }, answer('f', { verdict: 'refused' }))).toBe(false);
  });

  it('has a size and a colourway within the limits whenever it passes them', () => {
    const limits = fc.record({
      widthFromMm: fc.option(fc.integer({ min: 40, max: 60 })),
      widthToMm: fc.option(fc.integer({ min: 40, max: 60 })),
      colour: fc.constantFrom(null, 'black' as const, 'blue' as const, 'brown' as const),
    });
    fc.assert(
      fc.property(limits, fc.nat(shop.frames.length - 1), (limit, at) => {
        const frame = shop.frames[at];
        if (frame === undefined) return;
        const within = withinOf(limit);
        const some = frame.sizes.some((size) => frame.colourways.some((one) => within(size, one)));
        expect(passes(factsOf(frame, 0), undefined, { ...NO_FILTERS, ...limit })).toBe(some);
      }),
    );
  });
});

import { dinero, allocate as reference, toSnapshot } from 'dinero.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allocate } from '../../src/money/allocate.ts';
import { sumMinor } from '../../src/money/minor.ts';

const weights = fc
  .array(fc.integer({ min: 0, max: 10_000_000 }), { minLength: 1, maxLength: 8 })
  .filter((list) => list.some((weight) => weight > 0));
const amount = fc.integer({ min: -10_000_000, max: 10_000_000 });

describe('splitting an amount', () => {
  test.each([
    [2000, [9500, 8000], [1086, 914], '1085.71 and 914.29: the larger remainder gets the cent'],
    [100, [1, 1, 1], [34, 33, 33], 'equal remainders: the earlier place'],
    [5, [3, 7], [2, 3], '1.5 and 3.5: a tie, the earlier place'],
    [101, [0, 1], [0, 101], 'a weight of 0 gets nothing'],
    [-100, [1, 1, 1], [-34, -33, -33], 'the mirror of the positive'],
    [0, [0, 0], [0, 0], 'nothing over nothing'],
  ])('%i over %j is %j: %s', (minor, over, parts) => {
    expect(allocate(minor, over)).toEqual(parts);
  });

  test('law: no cent is lost, sum(parts) = amount', () => {
    fc.assert(
      fc.property(amount, weights, (minor, over) => {
        expect(sumMinor(allocate(minor, over))).toBe(minor);
      }),
    );
  });

  test('law: each part is within one unit of its exact share', () => {
    fc.assert(
      fc.property(amount, weights, (minor, over) => {
        const whole = BigInt(sumMinor(over));
        allocate(minor, over).forEach((part, place) => {
          const error = BigInt(part) * whole - BigInt(minor) * BigInt(over[place] ?? 0);
          expect(error < whole && error > -whole).toBe(true);
        });
      }),
    );
  });

  test('law: an amount up to the sum of the weights gives no part above its weight', () => {
    const upTo = weights.chain((over) =>
      fc.tuple(fc.integer({ min: 0, max: sumMinor(over) }), fc.constant(over)),
    );
    fc.assert(
      fc.property(upTo, ([minor, over]) => {
        allocate(minor, over).forEach((part, place) => {
          expect(part).toBeGreaterThanOrEqual(0);
          expect(part).toBeLessThanOrEqual(over[place] ?? 0);
        });
      }),
    );
  });

  test('law: the parts do not depend on the scale of the weights', () => {
    fc.assert(
      fc.property(amount, weights, fc.integer({ min: 1, max: 1000 }), (minor, over, factor) => {
        const scaled = over.map((weight) => weight * factor);
        expect(allocate(minor, scaled)).toEqual(allocate(minor, over));
      }),
    );
  });

  test('law: over equal weights it is what dinero.js gives', () => {
    const currency = { code: 'USD', base: 10, exponent: 2 };
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_000_000 }), fc.integer({ min: 1, max: 9 }), (minor, count) => {
        const equal = new Array<number>(count).fill(1);
        const expected = reference(dinero({ amount: minor, currency }), equal).map(
          (part) => toSnapshot(part).amount,
        );
        expect(allocate(minor, equal)).toEqual(expected);
      }),
    );
  });

  test('is refused over a negative weight, and over nothing', () => {
    expect(() => allocate(1, [2, -1])).toThrow('below 0');
    expect(() => allocate(1, [0, 0])).toThrow('every weight is 0');
    expect(() => allocate(1, [])).toThrow('Nothing to split 1 over');
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { divideHalfAwayFromZero } from '../../src/money/rounding.ts';

const denominator = fc.bigInt({ min: 1n, max: 10n ** 12n });

describe('dividing with halves away from zero', () => {
  // Commercial rounding (common practice).
  test.each([
    [5n, 2n, 3n],
    [-5n, 2n, -3n],
    [1n, 2n, 1n],
    [49n, 100n, 0n],
    [-49n, 100n, 0n],
    [50n, 100n, 1n],
    [7n, 3n, 2n],
    [8n, 3n, 3n],
  ])('%s / %s is %s', (numerator, by, whole) => {
    expect(divideHalfAwayFromZero(numerator, by)).toBe(whole);
  });

  test('law: 2 |q d - n| <= d, and a tie is the larger in size', () => {
    fc.assert(
      fc.property(fc.bigInt(), denominator, (numerator, by) => {
        const error = 2n * (divideHalfAwayFromZero(numerator, by) * by - numerator);
        expect(error <= by && error >= -by).toBe(true);
        if (error === by || error === -by) expect(error > 0n).toBe(numerator > 0n);
      }),
    );
  });

  test('law: f(-n, d) = -f(n, d)', () => {
    fc.assert(
      fc.property(fc.bigInt(), denominator, (numerator, by) => {
        expect(divideHalfAwayFromZero(-numerator, by)).toBe(-divideHalfAwayFromZero(numerator, by));
      }),
    );
  });
});

import { dinero, halfAwayFromZero, multiply, toSnapshot, transformScale } from 'dinero.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shareOf } from '../../src/money/share.ts';

const amount = fc.integer({ min: -1_000_000, max: 1_000_000 });
const ppm = fc.integer({ min: 0, max: 1_000_000 });

describe('a share of an amount', () => {
  test.each([
    [24400, 55_000, 1342, '5.5 % of 244.00 is 13.42 exactly'],
    [22910, 55_000, 1260, '5.5 % of 229.10 is 12.6005'],
    [32450, 150_000, 4868, '15 % of 32450 is 4867.5, a tie'],
    [-32450, 150_000, -4868, 'a tie below zero goes away from zero too'],
    [100, 5_000, 1, '0.5 % of 1.00 is half a cent, a tie'],
    [100, 4_999, 0, 'just below half a cent is nothing'],
  ])('of %i by %i ppm is %i: %s', (minor, share, expected) => {
    expect(shareOf(minor, share)).toBe(expected);
  });

  test('law: it is what dinero.js gives with its half away from zero', () => {
    const currency = { code: 'USD', base: 10, exponent: 2 };
    fc.assert(
      fc.property(amount, ppm, (minor, share) => {
        const scaled = multiply(dinero({ amount: minor, currency }), { amount: share, scale: 6 });
        const reference = toSnapshot(transformScale(scaled, 2, halfAwayFromZero)).amount;
        // + 0: the reference gives -0 for a share that rounds to nothing from below.
        expect(shareOf(minor, share)).toBe(reference + 0);
      }),
    );
  });

  test('law: share(m, 0) = 0, share(m, whole) = m, |share(m, p)| <= |m|', () => {
    fc.assert(
      fc.property(fc.maxSafeInteger(), ppm, (minor, share) => {
        expect(shareOf(minor, 0)).toBe(0);
        expect(shareOf(minor, 1_000_000)).toBe(minor === 0 ? 0 : minor);
        expect(Math.abs(shareOf(minor, share))).toBeLessThanOrEqual(Math.abs(minor));
      }),
    );
  });

  test('is refused where an operand or the result is no safe integer', () => {
    expect(() => shareOf(1.5, 1)).toThrow('amount');
    expect(() => shareOf(1, 0.5)).toThrow('parts per million');
    expect(() => shareOf(Number.MAX_SAFE_INTEGER, 2_000_000)).toThrow('share');
  });
});

import { describe, expect, test } from 'vitest';
import { checkMinor, sumMinor } from '../../src/money/minor.ts';

describe('an amount in minor units', () => {
  test.each([0.1, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53])('%s is refused', (minor) => {
    expect(() => checkMinor(minor, 'price')).toThrow(
      `price must be a whole number of minor units within ±2^53, found ${minor}`,
    );
  });

  test('has no negative zero', () => {
    expect(Object.is(checkMinor(-0), 0)).toBe(true);
  });

  test('adds up, and a sum that is no longer exact is refused', () => {
    expect(sumMinor([14900, -1490, 650])).toBe(14060);
    expect(sumMinor([])).toBe(0);
    expect(() => sumMinor([Number.MAX_SAFE_INTEGER, 1, -1])).toThrow('sum');
    expect(() => sumMinor([100, 0.5])).toThrow(RangeError);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Surcharge } from '../../src/catalogue/limit.ts';
import { surchargesFor } from '../../src/pricing/surcharges.ts';
import { lenses } from './offer.ts';

const band = (of: Surcharge['of'], above: number, upTo: number | null): Surcharge => {
  return { label: `${of} ${above} to ${upTo}`, of, above, upTo, priceMinor: 1000 };
};

describe('a surcharge by strength', () => {
  test.each([
    [{ strongestMeridianD: -4 }, false, 'at the lower edge'],
    [{ strongestMeridianD: -4.25 }, true, 'above it, minus'],
    [{ strongestMeridianD: 4.25 }, true, 'above it, plus'],
    [{ strongestMeridianD: 6 }, true, 'at the upper edge'],
    [{ strongestMeridianD: 6.25 }, false, 'beyond it'],
    [{ strongestMeridianD: -4.000000000000002 }, false, 'at the edge but for the noise of its computation'],
  ])('above 4 to 6 D, lenses with %j: %s (%s)', (strength, charged) => {
    const declared = [band('strongest-meridian', 4, 6)];
    expect(surchargesFor({ ...lenses, ...strength }, declared)).toEqual(charged ? declared : []);
  });

  test.each([
    ['cylinder', { cylinderD: -2.25 }],
    ['prism', { prism: 2.1 }],
    ['add', { addD: 2.25 }],
  ] as const)('looks at the %s that it names', (of, strength) => {
    const declared = [band(of, 2, null)];
    expect(surchargesFor({ ...lenses, ...strength }, declared)).toEqual(declared);
    expect(surchargesFor(lenses, declared)).toEqual([]);
  });

  test('law: bands that meet without a gap charge each strength above the first once', () => {
    const edges = fc.uniqueArray(fc.integer({ min: 1, max: 80 }), { minLength: 2, maxLength: 6 });
    fc.assert(
      fc.property(edges, fc.integer({ min: -100, max: 100 }), (quarters, strength) => {
        const steps = quarters.map((step) => step / 4).sort((a, b) => a - b);
        const declared = steps.map((above, i) => band('strongest-meridian', above, steps[i + 1] ?? null));
        const found = surchargesFor({ ...lenses, strongestMeridianD: strength / 4 }, declared);
        expect(found).toHaveLength(Math.abs(strength / 4) > (steps[0] ?? 0) ? 1 : 0);
      }),
    );
  });

  test('of a strength that is no number is an error, never free', () => {
    const declared = [band('prism', 2, null)];
    expect(() => surchargesFor({ ...lenses, prism: Number.NaN }, declared)).toThrow('prism');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limitFor, rounded } from '../../../src/optics/tolerance/limit.ts';
import type { Band } from '../../../src/optics/tolerance/table.ts';
import { real } from '../realistic.ts';

const BANDS: readonly Band[] = [
  { upTo: 0.12, including: false, limit: null, unit: 'degrees' },
  { upTo: 0.5, limit: 7, unit: 'degrees' },
  { upTo: Infinity, limit: 2, unit: '%' },
];

describe('the band of an ordered value', () => {
  it('has the inclusive side that its table says', () => {
    expect(limitFor(BANDS, 'cylinder', 0.11, 'degrees').limit).toBeNull();
    expect(limitFor(BANDS, 'cylinder', 0.12, 'degrees').limit).toBe(7);
    expect(limitFor(BANDS, 'cylinder', -0.5, 'degrees')).toEqual({
      limit: 7,
      unit: 'degrees',
      band: { quantity: 'cylinder', value: 0.5, over: 0.12, upTo: 0.5 },
    });
  });

  it('gives a percentage of the value, in the unit of the item', () => {
    expect(limitFor(BANDS, 'cylinder', -10, 'D')).toMatchObject({ limit: 0.2, unit: 'D' });
  });

  it('is none where no table is held', () => {
    expect(limitFor(null, 'add', 2, 'D')).toEqual({ limit: null, unit: 'D', band: null });
  });

  it('is the same for either sign', () => {
    fc.assert(
      fc.property(real(0, 20), (value) => {
        expect(limitFor(BANDS, 'x', -value, 'D')).toEqual(limitFor(BANDS, 'x', value, 'D'));
      }),
    );
  });
});

describe('rounding', () => {
  it('takes halves away from zero, also where floating point falls short of them', () => {
    expect([0.125, -0.125, 1.005, 4.135 - 4, 0.1349].map((value) => rounded(value))).toEqual([
      0.13, -0.13, 1.01, 0.14, 0.13,
    ]);
    expect(Object.is(rounded(-0.001), 0)).toBe(true);
  });

  it('moves a value by at most half a step, and leaves whole steps alone', () => {
    fc.assert(
      fc.property(real(-50, 50), fc.integer({ min: -5000, max: 5000 }), (value, hundredths) => {
        expect(Math.abs(rounded(value) - value)).toBeLessThanOrEqual(0.005 + 1e-8);
        expect(rounded(hundredths / 100)).toBe(hundredths / 100 + 0);
      }),
    );
  });
});

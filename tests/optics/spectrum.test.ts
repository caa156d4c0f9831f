import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { endNm, leastTransmittance, transmittanceAt } from '../../src/optics/spectrum.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

const ramp = { fromNm: 400, stepNm: 100, transmittance: [0.1, 0.5, 0.3] };
const spectrum = fc
  .array(real(0, 1), { minLength: 2, maxLength: 81 })
  .map((transmittance) => ({ fromNm: 380, stepNm: 5, transmittance }));

describe('a declared spectrum', () => {
  it('runs straight between its values and is not known beyond them', () => {
    expect(endNm(ramp)).toBe(600);
    expectNear(transmittanceAt(ramp, 425) ?? Number.NaN, 0.2, 1e-12, '');
    expectNear(transmittanceAt(ramp, 600) ?? Number.NaN, 0.3, 1e-12, '');
    expect(transmittanceAt(ramp, 399)).toBeNull();
    expect(transmittanceAt(ramp, 601)).toBeNull();
  });

  it('keeps each declared value', () => {
    fc.assert(
      fc.property(spectrum, (s) => {
        for (const [i, value] of s.transmittance.entries()) {
          expect(transmittanceAt(s, s.fromNm + i * s.stepNm)).toBe(value);
        }
      }),
    );
  });

  it('has its lowest value over a range at a declared point or an end of the range', () => {
    expectNear(leastTransmittance(ramp, 450, 550) ?? Number.NaN, 0.3, 1e-12, '');
    expectNear(leastTransmittance(ramp, 475, 600) ?? Number.NaN, 0.3, 1e-12, '');
    expect(leastTransmittance(ramp, 380, 500)).toBeNull();
    fc.assert(
      fc.property(spectrum, real(0, 1), real(0, 1), (s, a, b) => {
        const [from, to] = [a, b].map((share) => 380 + share * (endNm(s) - 380)).toSorted((x, y) => x - y);
        if (from === undefined || to === undefined) return;
        const least = leastTransmittance(s, from, to);
        for (let k = 0; k <= 20; k++) {
          const here = transmittanceAt(s, from + (k / 20) * (to - from));
          if (here !== null) expect(least).toBeLessThanOrEqual(here + 1e-9);
        }
      }),
    );
  });
});

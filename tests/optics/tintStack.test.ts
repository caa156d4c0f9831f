import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { luminousTransmittance } from '../../src/optics/lensColour.ts';
import {
  combinedSpectrum,
  combinedTransmittance,
  opticalDensity,
  transmittanceOfDensity,
} from '../../src/optics/tintStack.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

const flat = (value: number) => ({ fromNm: 380, stepNm: 5, transmittance: Array<number>(81).fill(value) });

describe('filters one behind another', () => {
  it('pass half of a half, and density 0.30 is about half', () => {
    expect(combinedTransmittance([0.5, 0.5])).toBe(0.25);
    expect(combinedTransmittance([])).toBe(1);
    expectNear(transmittanceOfDensity(0.301), 0.5, 0.0001, '');
    expect(opticalDensity(1)).toBe(0);
  });

  it('multiply transmittances and so add densities', () => {
    const t = real(0.001, 1);
    fc.assert(
      fc.property(t, t, t, (a, b, c) => {
        const together = opticalDensity(combinedTransmittance([a, b, c]));
        expectNear(together, opticalDensity(a) + opticalDensity(b) + opticalDensity(c), 1e-9, '');
        expectNear(transmittanceOfDensity(opticalDensity(a)), a, 1e-12, '');
      }),
    );
  });

  it('of neutral spectra come to the product of their luminous transmittances', () => {
    fc.assert(
      fc.property(real(0.01, 1), real(0.01, 1), (a, b) => {
        const both = luminousTransmittance(combinedSpectrum(flat(a), flat(b)));
        expectNear(both ?? Number.NaN, combinedTransmittance([a, b]), 1e-9, '');
      }),
    );
  });

  it('are known only where both are declared, at the finer step', () => {
    const one = { fromNm: 380, stepNm: 10, transmittance: [1, 0.5, 0.5] };
    const other = { fromNm: 390, stepNm: 5, transmittance: [0.2, 0.4, 0.6, 0.8] };
    expect(combinedSpectrum(one, other)).toEqual({ fromNm: 390, stepNm: 5, transmittance: [0.1, 0.2, 0.3] });
    const apart = { fromNm: 700, stepNm: 5, transmittance: [1, 1] };
    expect(combinedSpectrum(one, apart).transmittance).toEqual([]);
  });

  it('are refused outside 0 to 1', () => {
    expect(() => combinedTransmittance([0.5, 1.2])).toThrow('transmittance: expected 0 to 1, found 1.2.');
    expect(() => transmittanceOfDensity(-1)).toThrow('optical density: expected 0 or more, found -1.');
  });
});

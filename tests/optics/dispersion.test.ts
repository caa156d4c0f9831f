import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { abbeNumber, LINES_NM, sellmeierIndex } from '../../src/optics/dispersion.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

// refractiveindex.info (CC0), polycarbonate, Sultanova 2009.
const POLYCARBONATE = [{ b: 1.4182, cUm2: 0.021304 }];

describe('dispersion', () => {
  it('of polycarbonate is nd 1.5848, ne 1.5898 and Abbe 27.9 by open data, against 1.586 and 30 in the trade', () => {
    expectNear(sellmeierIndex(POLYCARBONATE, LINES_NM.d), 1.5848, 5e-5, '');
    expectNear(sellmeierIndex(POLYCARBONATE, LINES_NM.e), 1.5898, 5e-5, '');
    expectNear(abbeNumber(POLYCARBONATE), 27.9, 0.05, '');
  });

  it('falls with the wavelength in the visible', () => {
    fc.assert(
      fc.property(real(380, 770), (nm) => {
        expect(sellmeierIndex(POLYCARBONATE, nm + 10)).toBeLessThan(sellmeierIndex(POLYCARBONATE, nm));
      }),
    );
  });

  it('is refused for a wavelength in µm', () => {
    expect(() => sellmeierIndex(POLYCARBONATE, 0.58)).toThrow(
      'wavelength: expected 300 to 2500 nm, found 0.58.',
    );
  });
});

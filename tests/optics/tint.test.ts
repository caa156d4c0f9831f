import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  drivingFitness,
  LEAST_SIGNAL_QUOTIENTS,
  NIGHT_DRIVING_LEAST,
  tintCategory,
} from '../../src/optics/tint.ts';
import { real } from './realistic.ts';

const neutral = (value: number) => ({ fromNm: 380, stepNm: 400, transmittance: [value, value] });

describe('the category of a tint', () => {
  it.each([
    // College of Optometrists, tints and driving, quoting BS EN ISO 12312-1:2013; upper edges inclusive.
    [1, 0],
    [0.801, 0],
    [0.8, 1],
    [0.431, 1],
    [0.43, 2],
    [0.181, 2],
    [0.18, 3],
    [0.081, 3],
    [0.08, 4],
    [0.031, 4],
    [0.03, null],
    [0, null],
  ])('of luminous transmittance %d is %s', (transmittance, category) => {
    expect(tintCategory(transmittance)).toBe(category);
  });

  it('does not tip over an edge by rounding', () => {
    expect(tintCategory(0.1 + 0.7)).toBe(1);
    expect(tintCategory(0.9 * 0.2)).toBe(3);
  });

  it('never falls as the lens grows darker', () => {
    fc.assert(
      fc.property(real(0, 1), real(0, 1), (a, b) => {
        const order = (t: number) => tintCategory(t) ?? 5;
        expect(order(Math.min(a, b))).toBeGreaterThanOrEqual(order(Math.max(a, b)));
      }),
    );
  });

  it('is refused outside 0 to 1: percent are not fractions', () => {
    expect(() => tintCategory(80)).toThrow('luminous transmittance: expected 0 to 1, found 80.');
  });
});

describe('driving', () => {
  it('is never done with category 4 or darker', () => {
    fc.assert(
      fc.property(real(0, 0.08), (luminousTransmittance) => {
        const { day, night } = drivingFitness({ luminousTransmittance });
        expect([day, night]).toEqual([false, false]);
      }),
    );
  });

  it('is not done at twilight or night under 75 %', () => {
    expect(NIGHT_DRIVING_LEAST).toBe(0.75);
    expect(drivingFitness({ luminousTransmittance: 0.75 }).night).toBe(true);
    expect(drivingFitness({ luminousTransmittance: 0.749 })).toMatchObject({
      day: true,
      night: false,
      nightTransmittance: 'not met',
    });
  });

  it('has spectral requirements not shown where no spectrum or no quotients are declared', () => {
    const fitness = drivingFitness({ luminousTransmittance: 0.15 });
    expect(fitness).toMatchObject({ category: 3, spectral: 'not shown', signals: 'not shown' });
    const short = { fromNm: 500, stepNm: 100, transmittance: [0.15, 0.15] };
    expect(drivingFitness({ luminousTransmittance: 0.15, spectrum: short }).spectral).toBe('not shown');
  });

  it('needs 0.2 of the luminous transmittance at every wavelength from 475 to 650 nm', () => {
    const spectrum = { fromNm: 380, stepNm: 5, transmittance: Array<number>(81).fill(0.2) };
    expect(drivingFitness({ luminousTransmittance: 0.2, spectrum })).toMatchObject({
      spectral: 'met',
      day: true,
    });
    const notched = { ...spectrum, transmittance: spectrum.transmittance.with((580 - 380) / 5, 0.039) };
    expect(drivingFitness({ luminousTransmittance: 0.2, spectrum: notched })).toMatchObject({
      spectral: 'not met',
      day: false,
      night: false,
    });
    const outside = { ...spectrum, transmittance: spectrum.transmittance.with((470 - 380) / 5, 0) };
    expect(drivingFitness({ luminousTransmittance: 0.2, spectrum: outside }).spectral).toBe('met');
  });

  it('is open by day to every neutral filter of categories 0 to 3', () => {
    fc.assert(
      fc.property(real(0.0801, 1), (t) => {
        const filter = { luminousTransmittance: t, spectrum: neutral(t) };
        expect(drivingFitness(filter)).toMatchObject({ day: true, spectral: 'met' });
      }),
    );
  });

  it('needs signal quotients of 0.80 for red and 0.60 for the others', () => {
    // From memory (EN ISO 12312-1; editions differ).
    expect(LEAST_SIGNAL_QUOTIENTS).toEqual({ red: 0.8, yellow: 0.6, green: 0.6, blue: 0.6 });
    const at = (signalQuotients: { red: number; yellow: number; green: number; blue: number }) =>
      drivingFitness({ luminousTransmittance: 0.2, signalQuotients });
    expect(at(LEAST_SIGNAL_QUOTIENTS)).toMatchObject({ signals: 'met', day: true });
    for (const colour of ['red', 'yellow', 'green', 'blue'] as const) {
      const short = { ...LEAST_SIGNAL_QUOTIENTS, [colour]: LEAST_SIGNAL_QUOTIENTS[colour] - 0.01 };
      expect(at(short)).toMatchObject({ signals: 'not met', day: false });
    }
  });
});

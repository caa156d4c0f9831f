import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CORNEA_TO_ENTRANCE_PUPIL_MM,
  magnificationDifferencePercent,
  powerFactor,
  shapeFactor,
  spectacleMagnification,
} from '../../src/optics/magnification.ts';
import { expectNear } from './near.ts';
import { index, power, real } from './realistic.ts';

const lens = {
  frontPowerD: 8,
  centreThicknessMm: 4,
  index: 1.498,
  power: { sphereD: 4, cylinderD: 0, axisDeg: 180 },
  backVertexToEntrancePupilMm: 15,
};

describe('spectacle magnification', () => {
  it('of +4.00 with a +8.00 front, 4 mm thick, 15 mm from the entrance pupil is 1.022 x 1.064 = 1.087', () => {
    // UK optometry study cards, recomputed.
    const { shape, alongAxis, total } = spectacleMagnification(lens);
    expectNear(shape, 1.022, 0.0005, '');
    expectNear(alongAxis, 1.064, 0.0005, '');
    expectNear(total, 1.087, 0.0005, '');
  });

  it('is the product of its factors', () => {
    fc.assert(
      fc.property(power, real(0, 10), real(1, 10), index, (p, frontPowerD, centreThicknessMm, n) => {
        const given = { ...lens, power: p, frontPowerD, centreThicknessMm, index: n };
        const { shape, total } = spectacleMagnification(given);
        const mean = p.sphereD + p.cylinderD / 2;
        expectNear(total, shape * powerFactor(mean, 15), 1e-12, '');
        expectNear(shape, shapeFactor(frontPowerD, centreThicknessMm, n), 1e-12, '');
      }),
    );
  });

  it('enlarges through plus, shrinks through minus, and more so further from the eye', () => {
    fc.assert(
      fc.property(real(0.25, 20), real(5, 20), (d, mm) => {
        expect(powerFactor(d, mm)).toBeGreaterThan(1);
        expect(powerFactor(-d, mm)).toBeLessThan(1);
        expect(powerFactor(d, mm + 2)).toBeGreaterThan(powerFactor(d, mm));
        expect(powerFactor(-d, mm + 2)).toBeLessThan(powerFactor(-d, mm));
      }),
    );
  });

  it('tells the meridians of a cylinder apart', () => {
    const toric = spectacleMagnification({ ...lens, power: { sphereD: -2, cylinderD: -3, axisDeg: 90 } });
    expectNear(toric.alongAxis, 1 / 1.03, 1e-9, '');
    expectNear(toric.acrossAxis, 1 / 1.075, 1e-9, '');
  });

  it('differs between the eyes by none for equal lenses, and by sign when they are exchanged', () => {
    const [one, other] = [lens, { ...lens, power: { ...lens.power, sphereD: 2 } }].map(
      spectacleMagnification,
    );
    if (one === undefined || other === undefined) throw new Error('expected two lenses');
    expect(magnificationDifferencePercent(one, one)).toBe(0);
    expect(magnificationDifferencePercent(one, other)).toBeGreaterThan(3);
    expect(magnificationDifferencePercent(other, one)).toBeLessThan(-3);
  });

  it('is taken to the entrance pupil, about 3 mm behind the cornea', () => {
    expect(CORNEA_TO_ENTRANCE_PUPIL_MM).toBe(3);
  });

  it('is refused where the pupil lies at the focus', () => {
    expect(() => powerFactor(20, 50)).toThrow(
      'distance to the entrance pupil: 50.00 mm reaches the focus of 20 D, expected a shorter distance.',
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addPowers,
  fromPowerVector,
  meridianPowerD,
  normalised,
  sphericalEquivalentD,
  strongestMeridianD,
  toMinusCylinder,
  toPlusCylinder,
  toPowerVector,
  transpose,
} from '../../src/optics/prescription.ts';
import type { SpheroCylinder } from '../../src/optics/types.ts';
import { expectNear } from './near.ts';
import { axisDeg, power } from './realistic.ts';

const rx = (sphereD: number, cylinderD = 0, axis = 180): SpheroCylinder => ({
  sphereD,
  cylinderD,
  axisDeg: axis,
});

function expectSamePower(actual: SpheroCylinder, expected: SpheroCylinder, toleranceD = 1e-9): void {
  const a = toPowerVector(actual);
  const b = toPowerVector(expected);
  expectNear(a.meanD, b.meanD, toleranceD, 'D');
  expectNear(a.j0D, b.j0D, toleranceD, 'D');
  expectNear(a.j45D, b.j45D, toleranceD, 'D');
}

describe('transposition', () => {
  it.each([
    // Class notes on transposition, recomputed.
    [rx(-1, -0.5, 37), rx(-1.5, 0.5, 127)],
    [rx(2, -2, 60), rx(0, 2, 150)],
  ])('turns %o into %o and back', (one, other) => {
    expect(transpose(one)).toEqual(other);
    expect(transpose(other)).toEqual(one);
  });

  it('writes an axis of 0 as 180 and gives a sphere the axis 180', () => {
    expect(transpose(rx(1, -0.5, 90)).axisDeg).toBe(180);
    expect(normalised(rx(1, -0.5, 0)).axisDeg).toBe(180);
    expect(normalised(rx(1, 0, 45))).toEqual(rx(1));
  });

  it('never writes a negative zero', () => {
    expect(Object.is(normalised(rx(-0)).sphereD, 0)).toBe(true);
    expect(Object.is(normalised(rx(-0, -1, 20)).sphereD, 0)).toBe(true);
    expect(
      Object.is(toPowerVector(rx(1, 0, 30)).j45D, 0) && Object.is(toPowerVector(rx(1, 0, 120)).j0D, 0),
    ).toBe(true);
    expect(Object.is(toPowerVector(rx(-1)).j0D, 0) && Object.is(toPowerVector(rx(-1)).j45D, 0)).toBe(true);
  });

  it('twice gives the same back', () => {
    fc.assert(
      fc.property(power, (p) => {
        expect(transpose(transpose(p))).toEqual(normalised(p));
      }),
    );
  });

  it('keeps the power in every meridian', () => {
    fc.assert(
      fc.property(power, axisDeg, (p, meridian) => {
        expectNear(meridianPowerD(transpose(p), meridian), meridianPowerD(p, meridian), 1e-9, 'D');
      }),
    );
  });

  it('reaches the minus and the plus form of the same power', () => {
    fc.assert(
      fc.property(power, (p) => {
        expect(toMinusCylinder(p).cylinderD).toBeLessThanOrEqual(0);
        expect(toPlusCylinder(p).cylinderD).toBeGreaterThanOrEqual(0);
        expectSamePower(toMinusCylinder(p), p);
        expect(toMinusCylinder(toPlusCylinder(p))).toEqual(toMinusCylinder(p));
      }),
    );
  });
});

describe('the power of a meridian', () => {
  it('of +2.00 +3.50 x 135 at 90 is +3.75', () => {
    // Class notes on meridian power, recomputed.
    expectNear(meridianPowerD(rx(2, 3.5, 135), 90), 3.75, 1e-12, 'D');
  });

  it('is the sphere along the axis and sphere plus cylinder across it', () => {
    fc.assert(
      fc.property(power, (p) => {
        expectNear(meridianPowerD(p, p.axisDeg), p.sphereD, 1e-9, 'D');
        expectNear(meridianPowerD(p, p.axisDeg + 90), p.sphereD + p.cylinderD, 1e-9, 'D');
      }),
    );
  });

  it('averages to the spherical equivalent over any two meridians at right angles', () => {
    fc.assert(
      fc.property(power, axisDeg, (p, m) => {
        const mean = (meridianPowerD(p, m) + meridianPowerD(p, m + 90)) / 2;
        expectNear(mean, sphericalEquivalentD(p), 1e-9, 'D');
      }),
    );
  });

  it('is nowhere larger in size than the strongest, which has its sign', () => {
    expect(strongestMeridianD(rx(-4, -2, 30))).toBe(-6);
    expect(strongestMeridianD(rx(1, -3, 30))).toBe(-2);
    expect(strongestMeridianD(rx(3, -1, 30))).toBe(3);
    expect(strongestMeridianD(rx(-1, 2, 90))).toBe(1);
    fc.assert(
      fc.property(power, axisDeg, (p, m) => {
        expect(Math.abs(meridianPowerD(p, m))).toBeLessThanOrEqual(Math.abs(strongestMeridianD(p)) + 1e-9);
      }),
    );
  });
});

describe('a power vector', () => {
  it('of -2.00 -1.00 x 30 is (-2.500, +0.250, +0.433)', () => {
    // Computed from the definition of Thibos, Wheeler and Horner (1997), from memory.
    const { meanD, j0D, j45D } = toPowerVector(rx(-2, -1, 30));
    expectNear(meanD, -2.5, 1e-12, 'D');
    expectNear(j0D, 0.25, 1e-12, 'D');
    expectNear(j45D, 0.433, 0.0005, 'D');
  });

  it('goes back to the minus-cylinder form', () => {
    fc.assert(
      fc.property(power, (p) => {
        const back = fromPowerVector(toPowerVector(p));
        const minus = toMinusCylinder(p);
        expectNear(back.sphereD, minus.sphereD, 1e-9, 'D');
        expectNear(back.cylinderD, minus.cylinderD, 1e-9, 'D');
        expectNear(back.axisDeg, minus.axisDeg, 1e-6, 'degrees');
      }),
    );
  });
});

describe('the sum of powers', () => {
  it('of +1.00 x 180 and +2.00 x 45 is +2.62 -2.24 x 122', () => {
    // Class notes on obliquely crossed cylinders, recomputed.
    const sum = addPowers(rx(0, 1, 180), rx(0, 2, 45));
    expectNear(sum.sphereD, 2.62, 0.005, 'D');
    expectNear(sum.cylinderD, -2.24, 0.005, 'D');
    expectNear(sum.axisDeg, 122, 0.5, 'degrees');
  });

  it('of equal cylinders crossed at right angles is a sphere', () => {
    expect(addPowers(rx(0, 1.5, 20), rx(0, 1.5, 110))).toEqual(rx(1.5));
  });

  it('is plano where there is nothing to add', () => {
    expect(addPowers()).toEqual(rx(0));
  });

  it('is the sum in every meridian, in any order', () => {
    fc.assert(
      fc.property(power, power, power, axisDeg, (a, b, c, m) => {
        const sum = meridianPowerD(addPowers(a, b, c), m);
        expectNear(sum, meridianPowerD(a, m) + meridianPowerD(b, m) + meridianPowerD(c, m), 1e-9, 'D');
        expectSamePower(addPowers(c, a, b), addPowers(a, b, c));
      }),
    );
  });

  it('of a power and its opposite is plano', () => {
    fc.assert(
      fc.property(power, (p) => {
        const nothing = addPowers(p, rx(-p.sphereD, -p.cylinderD, p.axisDeg));
        expectSamePower(nothing, rx(0));
      }),
    );
  });
});

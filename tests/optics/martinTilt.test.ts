import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { martinWorn } from '../../src/optics/martinTilt.ts';
import { toPlusCylinder, toPowerVector } from '../../src/optics/prescription.ts';
import { NO_PRISM } from '../../src/optics/prism.ts';
import { wornAs } from '../../src/optics/tilt.ts';
import { expectNear } from './near.ts';
import { index, power, real, sphereD } from './realistic.ts';

const sphere = (d: number) => ({ sphereD: d, cylinderD: 0, axisDeg: 180 });

describe("Martin's formula", () => {
  it.each([
    // Durham Technical Community College, Opticianry 142, lens tilt.
    [15, 10, 15.15, 0.47],
    // Computed from the same formula.
    [10, 15, 10.22, 0.73],
  ])('of %d D tilted %d degrees with 2n = 3 gives %d with %d x 180', (d, tilt, sphere180, cylinder) => {
    const worn = toPlusCylinder(martinWorn(sphere(d), tilt, 180, 1.5));
    expectNear(worn.sphereD, sphere180, 0.006, 'D');
    expectNear(worn.cylinderD, cylinder, 0.006, 'D');
    expectNear(worn.axisDeg, 180, 1e-9, 'degrees');
  });

  it('puts the cylinder of face form on axis 90, minus for a minus lens', () => {
    const worn = martinWorn(sphere(-8), 12, 90, 1.6);
    expect(worn.cylinderD).toBeLessThan(0);
    expectNear(worn.axisDeg, 90, 1e-9, 'degrees');
  });

  it('agrees with the exact form to 0.15 % of the sphere for tilts to 15 degrees', () => {
    fc.assert(
      fc.property(sphereD, real(-15, 15), index, (d, tilt, n) => {
        const wear = { eye: 'right', pantoscopicTiltDeg: tilt, faceFormDeg: 0 } as const;
        const martin = toPowerVector(martinWorn(sphere(d), tilt, 180, n));
        const exact = toPowerVector(wornAs({ power: sphere(d), prism: NO_PRISM }, wear, n).power);
        expectNear(martin.meanD, exact.meanD, 0.0015 * Math.abs(d), 'D');
        expectNear(martin.j0D, exact.j0D, 0.0015 * Math.abs(d), 'D');
      }),
    );
  });

  it('leaves a lens that is not tilted alone, and tilts the same both ways', () => {
    fc.assert(
      fc.property(power, real(0, 20), (p, tilt) => {
        expectNear(toPowerVector(martinWorn(p, 0, 180, 1.5)).j45D, toPowerVector(p).j45D, 1e-9, 'D');
        expect(martinWorn(p, tilt, 180, 1.5)).toEqual(martinWorn(p, -tilt, 180, 1.5));
      }),
    );
  });
});

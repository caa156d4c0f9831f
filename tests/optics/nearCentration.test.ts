import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearCentrationMm, nearInsetMm } from '../../src/optics/nearCentration.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

const SIGHT = { workingMm: 400, rotationMm: 27, powerD: 0 };

describe('near centration', () => {
  it('of 63 at 400 mm is 59.02, so 1.99 in each eye', () => {
    // Jalie's form, computed for W 400, s 27, F 0
    expectNear(nearCentrationMm(63, SIGHT), 59.02, 0.005, 'mm');
    expectNear(nearInsetMm(63, SIGHT), 1.99, 0.005, 'mm');
  });

  it('without power is by similar triangles', () => {
    fc.assert(
      fc.property(real(50, 75), real(200, 2000), real(20, 35), (cd, workingMm, rotationMm) => {
        const found = nearCentrationMm(cd, { workingMm, rotationMm, powerD: 0 });
        expectNear(found, (cd * workingMm) / (workingMm + rotationMm), 1e-9, 'mm');
      }),
    );
  });

  it('asks for more inset nearer, with a wider PD and with more plus', () => {
    fc.assert(
      fc.property(real(50, 75), real(250, 600), real(-10, 10), (cd, workingMm, powerD) => {
        const inset = (centration: number, working: number, power: number) =>
          nearInsetMm(centration, { workingMm: working, rotationMm: 27, powerD: power });
        const here = inset(cd, workingMm, powerD);
        expect(inset(cd, workingMm - 20, powerD)).toBeGreaterThan(here);
        expect(inset(cd + 1, workingMm, powerD)).toBeGreaterThan(here);
        expect(inset(cd, workingMm, powerD + 1)).toBeGreaterThan(here);
      }),
    );
  });
});

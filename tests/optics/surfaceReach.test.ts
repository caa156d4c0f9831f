import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finishLens } from '../../src/optics/finishedLens.ts';
import type { LensToMake } from '../../src/optics/lensToMake.ts';
import { order, ring, sphere } from './frames.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

function refused(changes: Partial<LensToMake>) {
  const result = finishLens(order({ outline: ring(60), ...changes }));
  if (result.ok || !('reachMm' in result))
    throw new Error(`expected a surface out of reach: ${JSON.stringify(result)}`);
  return result;
}

describe('a lens out of reach of its surfaces', () => {
  it('names what is needed from the reference point, and where that is', () => {
    const { neededMm, atDeg, reachMm } = refused({
      power: sphere(-20),
      frontPowerD: 0,
      reference: { xMm: 3, yMm: -4 },
    });
    expectNear(neededMm, 35, 0.01, 'mm');
    expectNear(atDeg, 127, 1, 'degrees');
    expectNear(reachMm, 25, 1e-9, 'mm');
  });

  it('has a front that reaches less far the larger its conic constant', () => {
    // The ellipse r2 = (1 + k) reach2: at k = 0.44 a radius of 30 reaches 25.
    const found = refused({ power: sphere(10), frontPowerD: 500 / 30, frontConic: 0.44 });
    expect(found.reason).toBe('front-does-not-reach');
    expectNear(found.reachMm, 25, 1e-9, 'mm');
  });

  it('has a front as steep as its full addition', () => {
    const profile = { addD: 4, startYMm: 4, endYMm: -10, insetXMm: 0, surface: 'front' } as const;
    const found = refused({ power: sphere(10), frontPowerD: 15, profile });
    expect(found.reason).toBe('front-does-not-reach');
    expectNear(found.reachMm, 500 / 19, 1e-9, 'mm');
  });

  it('has a back as steep as its full addition, hollow or bulging', () => {
    const profile = { startYMm: 4, endYMm: -10, insetXMm: 0, surface: 'back' } as const;
    // Behind a flat front the back has the whole power: -14 with a degression of 4, +14 with an addition of 4.
    for (const sign of [-1, 1] as const) {
      const found = refused({
        power: sphere(14 * sign),
        frontPowerD: 0,
        profile: { ...profile, addD: 4 * sign },
        outline: ring(58),
      });
      expect(found.reason).toBe('back-does-not-reach');
      expectNear(found.reachMm, 500 / 18, 1e-9, 'mm');
      expectNear(found.neededMm, 29, 1e-9, 'mm');
    }
  });

  it('has a tilted back that turns nearer by radius times sine', () => {
    fc.assert(
      fc.property(real(2, 10), (amount) => {
        const plain = refused({ power: sphere(-18), frontPowerD: 0 });
        const tilted = refused({ power: sphere(-18), frontPowerD: 0, prism: { x: amount, y: 0 } });
        expect(tilted.reachMm).toBeLessThan(plain.reachMm);
        // Thin prism: a tilt of P/100/(n - 1).
        expectNear(tilted.reachMm / plain.reachMm, 1 - amount / 50, 0.02, '');
      }),
    );
  });
});

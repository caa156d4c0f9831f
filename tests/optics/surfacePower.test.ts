import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  backFor,
  backVertexPower,
  frontVergenceD,
  frontVertexPower,
  powerOfRadius,
  prismOfTilt,
  radiusOfPower,
  tiltForPrism,
} from '../../src/optics/surfacePower.ts';
import { expectNear } from './near.ts';
import { index, power, prism, real } from './realistic.ts';

describe('vertex powers of thick lenses', () => {
  it.each([
    // National Federation of Opticianry Schools, OPT 12 slide 17 and OPT 11 module 11
    { frontPowerD: 3, backPowerD: -8.5, thicknessMm: 2.2, fvp: -5.4, bvp: -5.49 },
    { frontPowerD: 9.5, backPowerD: -3.25, thicknessMm: 5.7, fvp: 6.29, bvp: 6.61 },
  ])('front $frontPowerD, back $backPowerD, $thicknessMm thick: $fvp and $bvp', ({ fvp, bvp, ...lens }) => {
    expectNear(frontVertexPower({ ...lens, index: 1.498 }), fvp, 0.01, 'D');
    expectNear(backVertexPower({ ...lens, index: 1.498 }), bvp, 0.01, 'D');
  });
});

describe('radius and power of a surface', () => {
  it('undo each other', () => {
    fc.assert(
      fc.property(real(0.25, 20), index, (powerD, n) => {
        expectNear(powerOfRadius(radiusOfPower(powerD, n), n), powerD, 1e-9, 'D');
        expectNear(powerOfRadius(radiusOfPower(-powerD, n), n), -powerD, 1e-9, 'D');
      }),
    );
  });

  it('of no power is flat', () => {
    expect(radiusOfPower(0, 1.5)).toBe(Number.POSITIVE_INFINITY);
    expect(powerOfRadius(Number.POSITIVE_INFINITY, 1.5)).toBe(0);
  });
});

describe('the back surface for an order', () => {
  it('gives the ordered power in both principal meridians, at the real thickness', () => {
    fc.assert(
      fc.property(power, index, real(0, 10), real(0.5, 12), (ordered, n, frontPowerD, thicknessMm) => {
        const made = backFor({ power: ordered, prism: { x: 0, y: 0 }, index: n, frontPowerD }, thicknessMm);
        const front = frontVergenceD(frontPowerD, thicknessMm, n);
        const along = front - powerOfRadius(made.generatingRadiusMm, n);
        const across = front - powerOfRadius(made.revolvedRadiusMm, n);
        const onAxis = Math.abs(made.generatingMeridianDeg - (ordered.axisDeg % 180)) < 1e-9;
        expectNear(onAxis ? along : across, ordered.sphereD, 1e-9, 'D');
        expectNear(onAxis ? across : along, ordered.sphereD + ordered.cylinderD, 1e-9, 'D');
        expect(Math.abs(made.generatingRadiusMm)).toBeLessThanOrEqual(Math.abs(made.revolvedRadiusMm));
        expect(made.generatingMeridianDeg).toBeGreaterThanOrEqual(0);
        expect(made.generatingMeridianDeg).toBeLessThan(180);
      }),
    );
  });

  it('is the same surface for either form of the cylinder', () => {
    const order = { prism: { x: 0, y: 0 }, index: 1.6, frontPowerD: 5 };
    const minus = backFor({ ...order, power: { sphereD: -1, cylinderD: -0.5, axisDeg: 37 } }, 2);
    const plus = backFor({ ...order, power: { sphereD: -1.5, cylinderD: 0.5, axisDeg: 127 } }, 2);
    expect(plus).toEqual(minus);
  });
});

describe('the tilt for a prism', () => {
  it('is undone by the prism of the tilt', () => {
    fc.assert(
      fc.property(prism, index, (ordered, n) => {
        const { slopeX, slopeY } = tiltForPrism(ordered, n);
        const back = prismOfTilt(slopeX, slopeY, n);
        expectNear(back.x, ordered.x, 1e-9, 'prism dioptres');
        expectNear(back.y, ordered.y, 1e-9, 'prism dioptres');
      }),
    );
  });

  it('is P/100/(n - 1) for a weak prism, and more than that never', () => {
    // Thin prism: deviation (n - 1) times the apical angle.
    expectNear(tiltForPrism({ x: 0.1, y: 0 }, 1.5).slopeX, 0.002, 1e-6, '');
    expect(tiltForPrism({ x: 10, y: 0 }, 1.5).slopeX).toBeLessThan(0.2);
  });

  it('bends a ray by atan(P/100) by the law of refraction', () => {
    fc.assert(
      fc.property(real(0.1, 12), index, (amount, n) => {
        const { slopeY } = tiltForPrism({ x: 0, y: amount }, n);
        const e = Math.atan(slopeY);
        expectNear(Math.asin(n * Math.sin(e)) - e, Math.atan(amount / 100), 1e-12, 'rad');
      }),
    );
  });
});

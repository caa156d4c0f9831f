import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromPowerMatrix, toPowerMatrix } from '../../src/optics/powerMatrix.ts';
import { meridianPowerD, toMinusCylinder } from '../../src/optics/prescription.ts';
import { expectNear } from './near.ts';
import { axisDeg, power } from './realistic.ts';

describe('the power matrix', () => {
  it('holds the sphere along x and sphere plus cylinder along y for an axis of 180', () => {
    const { xx, xy, yy } = toPowerMatrix({ sphereD: -3, cylinderD: -2, axisDeg: 180 });
    expectNear(xx, -3, 1e-12, 'D');
    expectNear(xy, 0, 1e-12, 'D');
    expectNear(yy, -5, 1e-12, 'D');
  });

  it('gives the power of each meridian as its quadratic form', () => {
    fc.assert(
      fc.property(power, axisDeg, (p, m) => {
        const f = toPowerMatrix(p);
        const [c, s] = [Math.cos((m * Math.PI) / 180), Math.sin((m * Math.PI) / 180)];
        expectNear(f.xx * c * c + 2 * f.xy * c * s + f.yy * s * s, meridianPowerD(p, m), 1e-9, 'D');
      }),
    );
  });

  it('goes back to the minus-cylinder form', () => {
    fc.assert(
      fc.property(power, (p) => {
        const back = fromPowerMatrix(toPowerMatrix(p));
        const minus = toMinusCylinder(p);
        expectNear(back.sphereD, minus.sphereD, 1e-9, 'D');
        expectNear(back.cylinderD, minus.cylinderD, 1e-9, 'D');
        expectNear(back.axisDeg, minus.axisDeg, 1e-6, 'degrees');
      }),
    );
  });

  it('of a sphere gives axis 180 and no cylinder', () => {
    expect(fromPowerMatrix({ xx: 2, xy: 0, yy: 2 })).toEqual({ sphereD: 2, cylinderD: 0, axisDeg: 180 });
  });
});

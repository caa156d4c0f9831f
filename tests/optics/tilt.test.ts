import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lensAxes } from '../../src/optics/lensPosition.ts';
import { placeLens, powerAlongRay, traceToEye } from '../../src/optics/lensTrace.ts';
import { fromPowerMatrix, toPowerMatrix } from '../../src/optics/powerMatrix.ts';
import { toPlusCylinder, toPowerVector } from '../../src/optics/prescription.ts';
import { NO_PRISM } from '../../src/optics/prism.ts';
import { orderFor, wornAs } from '../../src/optics/tilt.ts';
import type { SpheroCylinder } from '../../src/optics/types.ts';
import { prismInPosition } from '../../src/optics/wrapPrism.ts';
import { expectNear } from './near.ts';
import { index, position, power, prism } from './realistic.ts';
import { lensOf, usualOrder } from './singleVision.ts';

const effect = (sphereD: number, cylinderD = 0, axisDeg = 180) => ({
  power: { sphereD, cylinderD, axisDeg },
  prism: NO_PRISM,
});
const wrapped = { eye: 'right', pantoscopicTiltDeg: 0, faceFormDeg: 15 } as const;
const tilted = { eye: 'right', pantoscopicTiltDeg: 15, faceFormDeg: 0 } as const;

function expectPower(actual: SpheroCylinder, expected: SpheroCylinder, toleranceD: number): void {
  const [a, b] = [toPowerVector(actual), toPowerVector(expected)];
  expectNear(a.meanD, b.meanD, toleranceD, 'D');
  expectNear(a.j0D, b.j0D, toleranceD, 'D');
  expectNear(a.j45D, b.j45D, toleranceD, 'D');
}

describe('a lens worn tilted', () => {
  it('of +10.00 by 15 degrees, index 1.5, has 10.2315 sagittal and 10.9661 tangential', () => {
    // Computed by the exact oblique form for a thin lens.
    const { sphereD, cylinderD, axisDeg } = toPlusCylinder(wornAs(effect(10), tilted, 1.5).power);
    expectNear(sphereD, 10.2315, 5e-5, 'D');
    expectNear(sphereD + cylinderD, 10.9661, 5e-5, 'D');
    expectNear(axisDeg, 180, 1e-9, 'degrees');
    expectNear(toPlusCylinder(wornAs(effect(10), wrapped, 1.5).power).axisDeg, 90, 1e-9, 'degrees');
  });

  it('of -4.00 -2.00 x 45 wrapped by 15 degrees is worn as -4.224 -2.150 x 49.9', () => {
    // Computed by the exact matrix form, index 1.5.
    const worn = wornAs(effect(-4, -2, 45), wrapped, 1.5).power;
    expectNear(worn.sphereD, -4.224, 5e-4, 'D');
    expectNear(worn.cylinderD, -2.15, 5e-4, 'D');
    expectNear(worn.axisDeg, 49.9, 0.05, 'degrees');
  });

  it('is ordered -3.765 -1.916 x 40.1 to be worn as -4.00 -2.00 x 45', () => {
    // Computed by the exact matrix form, index 1.5.
    const order = orderFor(effect(-4, -2, 45), wrapped, 1.5).power;
    expectNear(order.sphereD, -3.765, 5e-4, 'D');
    expectNear(order.cylinderD, -1.916, 5e-4, 'D');
    expectNear(order.axisDeg, 40.1, 0.05, 'degrees');
  });

  it('gives what was prescribed when the order undoes the tilt, prism and wrap prism included', () => {
    fc.assert(
      fc.property(power, prism, prism, position, index, (p, wanted, wrap, wear, n) => {
        const order = orderFor({ power: p, prism: wanted }, wear, n, wrap);
        const worn = wornAs(order, wear, n, wrap);
        expectPower(worn.power, p, 1e-9);
        expectNear(worn.prism.x, wanted.x, 1e-9, 'prism dioptres');
        expectNear(worn.prism.y, wanted.y, 1e-9, 'prism dioptres');
      }),
    );
  });

  it('keeps its power where nothing is tilted', () => {
    fc.assert(
      fc.property(power, prism, index, (p, base, n) => {
        const straight = { eye: 'left', pantoscopicTiltDeg: 0, faceFormDeg: 0 } as const;
        const worn = wornAs({ power: p, prism: base }, straight, n);
        expectPower(worn.power, p, 1e-9);
        expectNear(worn.prism.x, base.x, 1e-12, 'prism dioptres');
      }),
    );
  });

  it('is mirrored between the eyes', () => {
    fc.assert(
      fc.property(power, position, index, (p, wear, n) => {
        const other = { ...wear, eye: wear.eye === 'right' ? ('left' as const) : ('right' as const) };
        const one = toPowerVector(wornAs({ power: p, prism: NO_PRISM }, wear, n).power);
        const mirrored = { ...p, axisDeg: 180 - p.axisDeg };
        const two = toPowerVector(wornAs({ power: mirrored, prism: NO_PRISM }, other, n).power);
        expectNear(two.meanD, one.meanD, 1e-9, 'D');
        expectNear(two.j0D, one.j0D, 1e-9, 'D');
        expectNear(two.j45D, -one.j45D, 1e-9, 'D');
      }),
    );
  });

  it('has the power that an exact ray finds as its thickness goes to nothing', () => {
    fc.assert(
      fc.property(usualOrder, position, (order, wear) => {
        const lens = lensOf({ ...order, thicknessMm: 1e-5 });
        const placed = placeLens(lens, wear);
        const ray = traceToEye(placed, [0, 0, 0], [0, 0, 1]);
        fc.pre(ray !== null);
        const traced = powerAlongRay(placed, ray, 0);
        const worn = toPowerMatrix(wornAs({ power: order.power, prism: NO_PRISM }, wear, order.index).power);
        expectNear(worn.xx, traced.xx, 3e-3, 'D');
        expectNear(worn.xy, traced.xy, 3e-3, 'D');
        expectNear(worn.yy, traced.yy, 3e-3, 'D');
      }),
    );
  });

  it('misses the prescription by no more than 3.3 tan² i F1² t/n where the lens has its real thickness', () => {
    fc.assert(
      fc.property(usualOrder, position, (order, wear) => {
        const { power: ordered } = orderFor({ power: order.power, prism: NO_PRISM }, wear, order.index);
        const placed = placeLens(lensOf({ ...order, power: ordered }), wear);
        const ray = traceToEye(placed, [0, 0, 0], [0, 0, 1]);
        fc.pre(ray !== null);
        const traced = toPowerVector(fromPowerMatrix(powerAlongRay(placed, ray, 0)));
        const wanted = toPowerVector(order.power);
        const tan2 = 1 / lensAxes(wear).z[2] ** 2 - 1;
        const mostD = (3.3 * tan2 * order.frontD ** 2 * order.thicknessMm) / 1000 / order.index + 1e-3;
        expectNear(traced.meanD, wanted.meanD, mostD, 'D');
        expectNear(2 * Math.hypot(traced.j0D - wanted.j0D, traced.j45D - wanted.j45D), 0, mostD, 'D');
      }),
    );
  });

  it('of -4.00 wrapped by 20 degrees is 0.01 D off at its real thickness, of +6.00 by 15 degrees 0.06 D', () => {
    // Computed by exact rays, index 1.5.
    const off = (sphereD: number, frontD: number, thicknessMm: number, faceFormDeg: number) => {
      const wear = { ...wrapped, faceFormDeg };
      const order = orderFor(effect(sphereD), wear, 1.5);
      const placed = placeLens(lensOf({ power: order.power, frontD, thicknessMm, index: 1.5 }), wear);
      const ray = traceToEye(placed, [0, 0, 0], [0, 0, 1]);
      if (ray === null) throw new Error('the axis passes');
      return toPowerVector(fromPowerMatrix(powerAlongRay(placed, ray, 0))).meanD - sphereD;
    };
    expectNear(off(-4, 4, 2, 20), -0.0078, 0.0005, 'D');
    expectNear(off(6, 9, 6, 15), -0.0623, 0.0005, 'D');
  });

  it('has the prism that an exact ray finds, for small prisms and no thickness', () => {
    fc.assert(
      fc.property(usualOrder, position, (order, wear) => {
        const ordered = { x: 0.6, y: -0.8 };
        const lens = lensOf({ ...order, thicknessMm: 1e-5, prism: ordered });
        const traced = prismInPosition(lens, wear);
        const worn = wornAs({ power: order.power, prism: ordered }, wear, order.index).prism;
        expectNear(worn.x, traced.x, 0.02, 'prism dioptres');
        expectNear(worn.y, traced.y, 0.02, 'prism dioptres');
      }),
    );
  });

  it('is refused beyond 45 degrees and for an index of 1', () => {
    const far = { ...wrapped, faceFormDeg: 60 };
    expect(() => wornAs(effect(1), far, 1.5)).toThrow('face form: expected -45 to 45 degrees, found 60.');
    expect(() => wornAs(effect(1), wrapped, 1)).toThrow('refractive index: expected 1.0001 to 5, found 1.');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeLens, powerAlongRay, traceToEye } from '../../src/optics/lensTrace.ts';
import { toPowerMatrix } from '../../src/optics/powerMatrix.ts';
import { unit, type Vec3 } from '../../src/optics/vector3.ts';
import { backwards, place, powerByNeighbours, type V } from './bareTrace.ts';
import { expectNear } from './near.ts';
import { position, real } from './realistic.ts';
import { lensOf, usualOrder } from './singleVision.ts';

const gaze = fc.record({ x: real(-0.4, 0.4), y: real(-0.4, 0.4) }).map(({ x, y }) => unit([x, y, 1]));
const CENTRE: Vec3 = [0, 0, 27];
const straight = { eye: 'right', pantoscopicTiltDeg: 0, faceFormDeg: 0 } as const;

describe('a ray to the eye', () => {
  it('is the same by implicit surfaces and angles as by sags and vectors', () => {
    fc.assert(
      fc.property(usualOrder, position, gaze, (order, wear, toEye) => {
        const lens = lensOf({ ...order, prism: { x: 1.5, y: -2 } });
        const ray = traceToEye(placeLens(lens, wear), CENTRE, toEye);
        fc.pre(ray !== null);
        const other = backwards(place(lens, wear), [0, 0, 27], toEye as unknown as V);
        for (const i of [0, 1, 2] as const) {
          expectNear(ray.atBack.point[i], other.atBack[i], 1e-6, 'mm');
          expectNear(ray.atFront.point[i], other.at[i], 1e-6, 'mm');
          expectNear(ray.beforeLens[i], other.towards[i], 1e-7, '');
        }
      }),
      { numRuns: 60 },
    );
  });

  it('passes the vertex of a straight lens undeviated', () => {
    const ray = traceToEye(
      placeLens(
        lensOf({ power: { sphereD: -4, cylinderD: -1, axisDeg: 20 }, frontD: 4, thicknessMm: 2, index: 1.6 }),
        straight,
      ),
      CENTRE,
      [0, 0, 1],
    );
    expect(ray?.beforeLens).toEqual([0, 0, 1]);
    expect(ray?.atFront.point).toEqual([0, 0, -2]);
  });

  it('does not exist beyond the surfaces or past total reflection', () => {
    const steep = lensOf({
      power: { sphereD: 20, cylinderD: 0, axisDeg: 180 },
      frontD: 22,
      thicknessMm: 9,
      index: 1.5,
    });
    expect(traceToEye(placeLens(steep, straight), CENTRE, unit([1.2, 0, 1]))).toBeNull();
  });
});

describe('the power along a ray', () => {
  it('is the back vertex power on the axis', () => {
    fc.assert(
      fc.property(usualOrder, (order) => {
        const lens = placeLens(lensOf(order), straight);
        const ray = traceToEye(lens, CENTRE, [0, 0, 1]);
        if (ray === null) throw new Error('expected the axis to pass');
        const power = powerAlongRay(lens, ray, 0);
        const ordered = toPowerMatrix(order.power);
        expectNear(power.xx, ordered.xx, 2e-3, 'D');
        expectNear(power.xy, ordered.xy, 2e-3, 'D');
        expectNear(power.yy, ordered.yy, 2e-3, 'D');
      }),
    );
  });

  it('is what neighbouring rays do, by finite differences of a second trace', () => {
    fc.assert(
      fc.property(usualOrder, position, gaze, (order, wear, toEye) => {
        const lens = lensOf({ ...order, prism: { x: -1, y: 1.5 } });
        const placed = placeLens(lens, wear);
        const ray = traceToEye(placed, CENTRE, toEye);
        fc.pre(ray !== null);
        const power = powerAlongRay(placed, ray, 0);
        const [dx, dy, dz] = toEye;
        // The eye's own x and y after the smallest turn that takes straight ahead to the ray.
        const a: V = [1 - (dx * dx) / (1 + dz), (-dx * dy) / (1 + dz), -dx];
        const b: V = [(-dx * dy) / (1 + dz), 1 - (dy * dy) / (1 + dz), -dy];
        const bare = place(lens, wear);
        const chief = backwards(bare, [0, 0, 27], toEye as unknown as V);
        const eyeRay = { at: chief.atBack, towards: toEye as unknown as V };
        const other = powerByNeighbours(bare, chief, eyeRay, a, b);
        expectNear(power.xx, other.xx, 2e-4, 'D');
        expectNear(power.xy, other.xy, 2e-4, 'D');
        expectNear(power.xy, other.yx, 2e-4, 'D');
        expectNear(power.yy, other.yy, 2e-4, 'D');
      }),
      { numRuns: 60 },
    );
  });
});

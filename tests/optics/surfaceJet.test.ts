import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backShape, frontShape, type SagShape } from '../../src/optics/surfaceJet.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

const radius = fc.oneof(real(40, 400), real(-400, -40), fc.constant(Infinity));
const back = fc.record({
  generatingRadiusMm: radius,
  revolvedRadiusMm: radius,
  generatingMeridianDeg: real(0, 179),
});
const place = fc.record({ x: real(-20, 20), y: real(-20, 20) });
const level = { tiltSlopeX: 0, tiltSlopeY: 0 };

function expectDerivatives(shape: SagShape, x: number, y: number): void {
  const h = 1e-3;
  const at = (dx: number, dy: number) => shape(x + dx, y + dy)?.z ?? Number.NaN;
  const jet = shape(x, y);
  if (jet === null) throw new Error('expected a surface here');
  expectNear(jet.zx, (at(h, 0) - at(-h, 0)) / (2 * h), 1e-7, 'mm/mm');
  expectNear(jet.zy, (at(0, h) - at(0, -h)) / (2 * h), 1e-7, 'mm/mm');
  expectNear(jet.zxx, (at(h, 0) - 2 * at(0, 0) + at(-h, 0)) / h ** 2, 1e-6, '1/mm');
  expectNear(jet.zyy, (at(0, h) - 2 * at(0, 0) + at(0, -h)) / h ** 2, 1e-6, '1/mm');
  expectNear(jet.zxy, (at(h, h) - at(h, -h) - at(-h, h) + at(-h, -h)) / (4 * h * h), 1e-6, '1/mm');
}

describe('the front', () => {
  it('has the sag of its sphere', () => {
    fc.assert(
      fc.property(real(60, 500), place, (r, { x, y }) => {
        const z = frontShape({ radiusMm: r, conic: 0 })(x, y)?.z ?? Number.NaN;
        expectNear(z, r - Math.sqrt(r * r - x * x - y * y), 1e-10, 'mm');
      }),
    );
  });

  it('is a parabola for a conic constant of -1', () => {
    expectNear(frontShape({ radiusMm: 80, conic: -1 })(12, 16)?.z ?? Number.NaN, 400 / 160, 1e-12, 'mm');
  });

  it('has the derivatives of its sag', () => {
    fc.assert(
      fc.property(real(60, 500), real(-3, 1), place, (radiusMm, conic, { x, y }) => {
        expectDerivatives(frontShape({ radiusMm, conic }), x, y);
      }),
    );
  });

  it('ends where its sphere ends', () => {
    expect(frontShape({ radiusMm: 20, conic: 0 })(20, 1)).toBeNull();
    expect(frontShape({ radiusMm: Infinity, conic: 0 })(20, 1)).toMatchObject({ z: 0, zx: 0, zxx: 0 });
  });
});

describe('the back', () => {
  it('is the sphere where its radii are equal', () => {
    fc.assert(
      fc.property(real(40, 400), real(0, 179), place, (r, generatingMeridianDeg, { x, y }) => {
        const shape = backShape({
          generatingRadiusMm: r,
          revolvedRadiusMm: r,
          generatingMeridianDeg,
          ...level,
        });
        expectNear(shape(x, y)?.z ?? Number.NaN, r - Math.sqrt(r * r - x * x - y * y), 1e-10, 'mm');
      }),
    );
  });

  it('lies on the circle of its arc turned about the axis', () => {
    fc.assert(
      fc.property(real(40, 90), real(95, 400), place, (r, R, { x, y }) => {
        const shape = backShape({
          generatingRadiusMm: r,
          revolvedRadiusMm: R,
          generatingMeridianDeg: 0,
          ...level,
        });
        const z = shape(x, y)?.z ?? Number.NaN;
        const fromAxis = Math.hypot(y, R - z);
        expectNear(Math.hypot(x, fromAxis - (R - r)), r, 1e-9, 'mm');
      }),
    );
  });

  it('has the derivatives of its sag, hollow, bulging and flat', () => {
    fc.assert(
      fc.property(back, place, (surface, { x, y }) => {
        expectDerivatives(backShape({ ...surface, ...level }), x, y);
      }),
    );
  });

  it('ends where its arc ends', () => {
    const surface = { generatingRadiusMm: 20, revolvedRadiusMm: 60, generatingMeridianDeg: 90, ...level };
    expect(backShape(surface)(0, 21)).toBeNull();
    expect(backShape(surface)(65, 0)).toBeNull();
  });
});

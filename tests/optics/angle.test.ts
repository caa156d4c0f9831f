import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  axisDistanceDeg,
  directionDeg,
  fullTurnDeg,
  taboAxisDeg,
  toDegrees,
  toRadians,
} from '../../src/optics/angle.ts';
import { expectNear } from './near.ts';
import { axisDeg, real } from './realistic.ts';

describe('a TABO axis', () => {
  it('is written 180 for 0, and within the half turn otherwise', () => {
    expect([0, 180, 360, -180, 1e-12].map(taboAxisDeg)).toEqual([180, 180, 180, 180, 180]);
    expect([37, 217, -1, 181].map(taboAxisDeg)).toEqual([37, 37, 179, 1]);
  });

  it('is the same after any number of half turns', () => {
    fc.assert(
      fc.property(axisDeg, fc.integer({ min: -5, max: 5 }), (axis, turns) => {
        expect(taboAxisDeg(axis + 180 * turns)).toBe(axis);
      }),
    );
  });

  it('is at most 90 degrees from another, the same both ways and through 180', () => {
    expect(axisDistanceDeg(5, 178)).toBe(7);
    expect(axisDistanceDeg(90, 180)).toBe(90);
    fc.assert(
      fc.property(axisDeg, axisDeg, (a, b) => {
        const apart = axisDistanceDeg(a, b);
        expect(apart).toBe(axisDistanceDeg(b, a));
        expect(apart >= 0 && apart <= 90).toBe(true);
      }),
    );
  });
});

describe('an angle', () => {
  it('runs from 0 to below 360 in 360-degree notation', () => {
    expect([0, 360, -90, 217, 577].map(fullTurnDeg)).toEqual([0, 0, 270, 217, 217]);
    expect(fullTurnDeg(-1e-13)).toBe(0);
  });

  it('survives the way to radians and back', () => {
    fc.assert(
      fc.property(real(-720, 720), (deg) => expectNear(toDegrees(toRadians(deg)), deg, 1e-9, 'degrees')),
    );
  });
});

describe('the direction of a point', () => {
  it('goes counter-clockwise from +x, whatever the distance', () => {
    expect([directionDeg(2, 0), directionDeg(0, 3), directionDeg(-1, 0), directionDeg(0, -9)]).toEqual([
      0, 90, 180, 270,
    ]);
    fc.assert(
      fc.property(real(0, 359.999), real(0.1, 50), (deg, mm) => {
        const found = directionDeg(mm * Math.cos(toRadians(deg)), mm * Math.sin(toRadians(deg)));
        expectNear(axisDistanceDeg(found / 2, deg / 2), 0, 1e-9, 'degrees');
        expect(found >= 0 && found < 360).toBe(true);
      }),
    );
  });
});

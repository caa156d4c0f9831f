import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  areaMm2,
  box,
  inside,
  mirror,
  outlinePoint,
  perimeterMm,
  radiusAt,
} from '../../src/optics/outline.ts';
import { outline, ring } from './frames.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

describe('a ring of 360 radii of 25 mm', () => {
  it('measures 50.00 each way and 157.08 round', () => {
    // HBOX = VBOX = FED = 50.00, CIRC 157.08: computed, 2 pi r.
    const measured = box(ring(50));
    expectNear(measured.aMm, 50, 0.005, 'mm');
    expectNear(measured.bMm, 50, 0.005, 'mm');
    expectNear(measured.edMm, 50, 0.005, 'mm');
    expectNear(perimeterMm(ring(50)), 157.08, 0.005, 'mm');
    expectNear(areaMm2(ring(50)), Math.PI * 625, 0.2, 'mm2');
  });

  it('has its longest radius at 0 degrees, the first of equals', () => {
    expect(box(ring(50)).edAxisDeg).toBe(0);
  });
});

describe('a square by 360 radii', () => {
  const square = {
    radiiMm: Array.from({ length: 360 }, (_, i) => {
      const angle = (i * Math.PI) / 180;
      return 20 / Math.max(Math.abs(Math.cos(angle)), Math.abs(Math.sin(angle)));
    }),
  };

  it('has its corners at half the diagonal', () => {
    const { edMm, edAxisDeg, aMm } = box(square);
    expectNear(edMm, 40 * Math.SQRT2, 1e-9, 'mm');
    expectNear(aMm, 40, 1e-9, 'mm');
    expect(edAxisDeg).toBe(45);
    expectNear(perimeterMm(square), 160, 1e-9, 'mm');
    expectNear(areaMm2(square), 1600, 1e-9, 'mm2');
  });

  it('is straight between two radii', () => {
    expectNear(radiusAt(square, 10.37), 20 / Math.cos((10.37 * Math.PI) / 180), 1e-9, 'mm');
    expectNear(radiusAt(square, -10.37), radiusAt(square, 349.63), 1e-9, 'mm');
  });
});

describe('laws of outlines', () => {
  it('mirrored twice it is unchanged, and left(a) = right(180 - a)', () => {
    fc.assert(
      fc.property(outline, real(0, 360), (shape, deg) => {
        expect(mirror(mirror(shape))).toEqual(shape);
        expectNear(radiusAt(mirror(shape), deg), radiusAt(shape, 180 - deg), 1e-6, 'mm');
      }),
    );
  });

  it('of an odd count of radii it mirrors about the vertical too', () => {
    const odd = { radiiMm: Array.from({ length: 73 }, (_, i) => 20 + 3 * Math.cos((2 * Math.PI * i) / 73)) };
    expectNear(radiusAt(mirror(odd), 30), radiusAt(odd, 150), 0.01, 'mm');
  });

  it('holds its own points and centre, and nothing a little farther out', () => {
    fc.assert(
      fc.property(outline, fc.nat(719), (shape, i) => {
        const point = outlinePoint(shape, i);
        expect(inside(shape, point)).toBe(true);
        expect(inside(shape, { xMm: 0, yMm: 0 })).toBe(true);
        expect(inside(shape, { xMm: point.xMm * 1.001, yMm: point.yMm * 1.001 })).toBe(false);
      }),
    );
  });

  it('lies in its box, touches it, and ED is no less than A or B nor more than the diagonal', () => {
    fc.assert(
      fc.property(outline, (shape) => {
        const { aMm, bMm, edMm } = box(shape);
        expect(edMm).toBeGreaterThan(Math.max(aMm, bMm) - 0.01);
        expect(edMm).toBeLessThan(Math.hypot(aMm, bMm) + 0.01);
        expect(areaMm2(shape)).toBeLessThan(aMm * bMm);
        expect(perimeterMm(shape)).toBeLessThan(2 * (aMm + bMm));
      }),
    );
  });
});

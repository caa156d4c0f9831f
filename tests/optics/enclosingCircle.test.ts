import fc from 'fast-check';
// @ts-expect-error: the reference has no types
import reference from 'smallest-enclosing-circle';
import { describe, expect, it } from 'vitest';
import { enclosingCircle } from '../../src/optics/enclosingCircle.ts';
import { box, outlinePoint, outlinePoints } from '../../src/optics/outline.ts';
import { outline, ring } from './frames.ts';
import { expectNear } from './near.ts';

describe('the smallest circle round an outline', () => {
  it('is the one that an independent library finds', () => {
    fc.assert(
      fc.property(outline, (lens) => {
        const { xMm, yMm } = outlinePoints(lens);
        const expected = reference(Array.from(xMm, (x, i) => ({ x, y: yMm[i] })));
        const found = enclosingCircle(lens);
        expectNear(found.radiusMm, expected.r, 1e-6, 'mm');
        expectNear(found.xMm, expected.x, 1e-3, 'mm');
        expectNear(found.yMm, expected.y, 1e-3, 'mm');
      }),
      { numRuns: 30 },
    );
  });

  it('holds every point, and is no larger than ED nor smaller than the box', () => {
    fc.assert(
      fc.property(outline, fc.nat(359), (lens, i) => {
        const { xMm, yMm, radiusMm } = enclosingCircle(lens);
        const point = outlinePoint(lens, i);
        expect(Math.hypot(point.xMm - xMm, point.yMm - yMm)).toBeLessThanOrEqual(radiusMm + 1e-8);
        const { aMm, edMm } = box(lens);
        expect(2 * radiusMm).toBeLessThanOrEqual(edMm + 0.01);
        expect(2 * radiusMm).toBeGreaterThanOrEqual(aMm - 1e-9);
      }),
    );
  });

  it('of a ring is the ring', () => {
    const { xMm, yMm, radiusMm } = enclosingCircle(ring(50));
    expectNear(Math.hypot(xMm, yMm), 0, 1e-6, 'mm');
    expectNear(radiusMm, 25, 1e-6, 'mm');
  });
});

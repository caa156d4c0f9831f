import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaMm2, box, outlinePoints, perimeterMm, radiusAt } from '../../src/optics/outline.ts';
import { outlineFromPoints, recentre, resample, rotate } from '../../src/optics/outlineShape.ts';
import { outline, ring } from './frames.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

/** As many radii, each within the tolerance, mm. */
function expectSame(actual: readonly number[], expected: readonly number[], toleranceMm: number): void {
  expect(actual).toHaveLength(expected.length);
  const apart = actual.map((r, i) => Math.abs(r - (expected[i] ?? Number.NaN)));
  expectNear(Math.max(...apart), 0, toleranceMm, 'mm');
}

describe('an outline from points', () => {
  it('gives back the radii that the points were made from', () => {
    fc.assert(
      fc.property(outline, (shape) => {
        const again = outlineFromPoints(outlinePoints(shape), 360);
        expectSame(again?.radiiMm ?? [], shape.radiiMm, 1e-9);
      }),
    );
  });

  it('is refused where the curve runs clockwise, folds back or does not go round the centre', () => {
    const { xMm, yMm } = outlinePoints(ring(50));
    expect(outlineFromPoints({ xMm: xMm.toReversed(), yMm: yMm.toReversed() }, 360)).toBeNull();
    expect(outlineFromPoints({ xMm: xMm.map((x) => x + 60), yMm }, 360)).toBeNull();
    expect(outlineFromPoints({ xMm: [1, Number.NaN, -1], yMm: [0, 1, 0] }, 36)).toBeNull();
  });
});

describe('moving, turning and resampling', () => {
  it('recentring finds the shift of a circle and centres its box', () => {
    fc.assert(
      fc.property(real(-8, 8), real(-8, 8), (dx, dy) => {
        const { xMm, yMm } = outlinePoints(ring(50, 720));
        const moved = outlineFromPoints({ xMm: xMm.map((x) => x + dx), yMm: yMm.map((y) => y + dy) }, 360);
        const centred = moved && recentre(moved);
        expectNear(centred?.movedXMm ?? Number.NaN, dx, 0.01, 'mm');
        expectNear(centred?.movedYMm ?? Number.NaN, dy, 0.01, 'mm');
        const b = box(centred?.outline ?? ring(1));
        expectNear(b.minX + b.maxX, 0, 1e-3, 'mm');
        expectNear(b.aMm, 50, 0.02, 'mm');
      }),
    );
  });

  it('turning keeps perimeter and area, and turning back restores the shape', () => {
    fc.assert(
      fc.property(outline, fc.integer({ min: 0, max: 360 }), (shape, deg) => {
        const turned = rotate(shape, deg);
        expectNear(perimeterMm(turned), perimeterMm(shape), 1e-6, 'mm');
        expectNear(areaMm2(turned), areaMm2(shape), 1e-6, 'mm2');
        expectNear(radiusAt(rotate(turned, -deg), 33), radiusAt(shape, 33), 1e-6, 'mm');
      }),
    );
  });

  it('turning by 90 degrees exchanges width and height', () => {
    fc.assert(
      fc.property(outline, (shape) => {
        expectNear(box(rotate(shape, 90)).aMm, box(shape).bMm, 0.01, 'mm');
      }),
    );
  });

  it('more radii and back again leaves the shape where it was', () => {
    fc.assert(
      fc.property(outline, (shape) => {
        const back = resample(resample(shape, 720), 360);
        expectSame(back.radiiMm, shape.radiiMm, 1e-9);
      }),
    );
  });

  it('reads a smooth shape between its radii to 0.01 mm', () => {
    const smooth = (deg: number) => 22 + 3 * Math.cos((2 * Math.PI * deg) / 180);
    const coarse = { radiiMm: Array.from({ length: 72 }, (_, i) => smooth(i * 5)) };
    const fine = resample(coarse, 360).radiiMm;
    expectSame(
      fine,
      fine.map((_, deg) => smooth(deg)),
      0.01,
    );
  });
});

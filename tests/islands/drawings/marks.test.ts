import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closedPath } from '../../../src/components/drawing/svgPath.ts';
import { dimension, head, unflat } from '../../../src/islands/drawings/marks.ts';
import { outlinePoint } from '../../../src/optics/outline.ts';
import { outlineFlat } from '../../../src/quote/view/points.ts';
import { distanceTo, extent, pathPoints } from '../../components/drawing/pathPoints.ts';
import { outline } from '../../optics/frames.ts';

describe('a lens drawn from the points of a view', () => {
  it('passes every point of its outline within half the line that draws it', () => {
    fc.assert(
      fc.property(outline, (lens) => {
        const drawnLens = pathPoints(closedPath(unflat(outlineFlat(lens))));
        lens.radiiMm.forEach((_, i) => {
          expect(distanceTo(drawnLens, outlinePoint(lens, i))).toBeLessThan(0.25);
        });
      }),
      { numRuns: 15 },
    );
  });
});

describe('an arrow head', () => {
  it('has its tip where it is put and lies behind it', () => {
    const points = pathPoints(head(3, 4, 0, 1));
    expect(points[0]).toEqual({ xMm: 3, yMm: -4 });
    expect(extent(points).top).toBeGreaterThan(-4);
  });
});

describe('a dimension line', () => {
  it('runs between what it measures, and from outside where that is narrow', () => {
    expect(dimension(0, 20, 5).line).toBe('M0 5H20');
    const narrow = extent(pathPoints(dimension(0, 2, 5).line));
    expect([narrow.left < 0, narrow.right > 2]).toEqual([true, true]);
    for (const wide of [2, 20]) {
      const tips = [...dimension(0, wide, 5).heads.matchAll(/M(\S+) 5/g)].map(([, x]) => Number(x));
      expect(tips).toEqual([0, wide]);
    }
  });
});

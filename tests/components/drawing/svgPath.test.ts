import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contourOf } from '../../../src/components/drawing/contour.ts';
import { arcPath, closedPath, num } from '../../../src/components/drawing/svgPath.ts';
import { OUTLINE_FAMILIES } from '../../../src/optics/outlineFamily.ts';
import { expectNear } from '../../optics/near.ts';
import { distanceTo, extent, pathPoints } from './pathPoints.ts';
import { sampleFrame } from './sampleFrame.ts';

const anyLens = fc.record({
  family: fc.constantFrom(...OUTLINE_FAMILIES),
  // Lens widths and heights that frames have (check value: A 40 to 60, B 25 to 50, from memory).
  aMm: fc.integer({ min: 40, max: 60 }),
  bMm: fc.integer({ min: 30, max: 48 }),
});

describe('a drawn contour', () => {
  it('passes each point of the outline within 0.06 mm', () => {
    fc.assert(
      fc.property(anyLens, (lens) => {
        const contour = contourOf(sampleFrame(lens).size.outline.radiiMm);
        const drawn = pathPoints(closedPath(contour));
        for (const p of contour.filter((_, i) => i % 4 === 0))
          expectNear(distanceTo(drawn, p), 0, 0.06, 'mm');
        const box = extent(drawn);
        const exact = extent(contour);
        for (const edge of ['left', 'right', 'top', 'bottom'] as const)
          expectNear(box[edge], exact[edge], 0.06, 'mm');
      }),
      { numRuns: 25 },
    );
  });

  it('holds a circle of 25 mm to 0.02 mm in a few curves', () => {
    const path = closedPath(contourOf(new Array<number>(360).fill(25)));
    for (const p of pathPoints(path)) expectNear(Math.hypot(p.xMm, p.yMm), 25, 0.02, 'mm');
    expect(path.match(/C/g)?.length).toBeLessThan(20);
  });

  it('draws a contour of 36 points as well as one of 1440', () => {
    for (const count of [36, 1440]) {
      const box = extent(pathPoints(closedPath(contourOf(new Array<number>(count).fill(20)))));
      expectNear(box.widthMm, 40, 0.1, 'mm');
    }
  });
});

describe('an open arc', () => {
  it('begins and ends at its own ends', () => {
    const arc = contourOf(new Array<number>(360).fill(25)).slice(10, 100);
    const drawn = pathPoints(arcPath(arc));
    const first = arc[0];
    const last = arc[arc.length - 1];
    expect(drawn[0]?.xMm).toBeCloseTo(first?.xMm ?? Number.NaN, 1);
    expect(drawn[drawn.length - 1]?.yMm).toBeCloseTo(last?.yMm ?? Number.NaN, 1);
  });
});

describe('a number in a path', () => {
  it.each([
    [1.005, '1'],
    [-0.001, '0'],
    [12.3456, '12.35'],
    [-7, '-7'],
  ])('writes %d as %s', (value, text) => {
    expect(num(value)).toBe(text);
  });
});

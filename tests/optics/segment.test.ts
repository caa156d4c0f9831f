import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { segmentCorners, segmentLeft } from '../../src/optics/segment.ts';
import { outline, ring } from './frames.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

/** From memory: a 28 mm flat top has its centre 5 mm below the top. */
const FLAT_TOP = { widthMm: 28, centreBelowTopMm: 5 };
const ROUND = { widthMm: 24, centreBelowTopMm: 12 };

describe('the segment of a bifocal', () => {
  it('28 mm flat top is 19 deep with a top 26.15 wide', () => {
    const corners = segmentCorners(FLAT_TOP, { xMm: 1, yMm: -2 });
    const ys = corners.map(([, y]) => y);
    expectNear(Math.min(...ys), -21, 1e-3, 'mm');
    expectNear(Math.max(...ys), -2, 1e-9, 'mm');
    const { topWidthMm, depthMm, share } = segmentLeft(ring(70), FLAT_TOP, { xMm: 1, yMm: -2 });
    expectNear(topWidthMm, 2 * Math.sqrt(14 ** 2 - 5 ** 2), 1e-9, 'mm');
    expectNear(depthMm, 19, 1e-9, 'mm');
    expectNear(share, 1, 1e-9, '');
  });

  it('of a round one has the area of its circle', () => {
    expectNear(segmentLeft(ring(70), ROUND, { xMm: 0, yMm: -2 }).wholeMm2, Math.PI * 144, 0.2, 'mm2');
  });

  it('is cut by the outline: less is left the lower it sits, all of it adds up', () => {
    fc.assert(
      fc.property(outline, real(-4, 4), real(-8, 0), real(0.5, 4), (lens, xMm, yMm, lower) => {
        const here = segmentLeft(lens, FLAT_TOP, { xMm, yMm });
        const below = segmentLeft(lens, FLAT_TOP, { xMm, yMm: yMm - lower });
        expect(here.share).toBeLessThanOrEqual(1 + 1e-9);
        expect(below.depthMm).toBeLessThanOrEqual(here.depthMm + 1e-9);
        expect(below.leftMm2).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

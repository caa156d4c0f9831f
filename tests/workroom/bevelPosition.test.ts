import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bevelWidthMm, placeBevel } from '../../src/optics/bevel.ts';
import { bevelPosition } from '../../src/workroom/bevelPosition.ts';
import { shop } from './jobs.ts';

const { cut } = shop.workroom;
const even = (edgeMm: number) => {
  const all = (mm: number) => Array.from({ length: 72 }, () => mm);
  return { edgeMm: all(edgeMm), frontMm: all(2), radiiMm: all(25) };
};
const anyEdge = fc
  .tuple(
    fc.double({ min: 2.2, max: 5, noNaN: true }),
    fc.double({ min: 0, max: 4, noNaN: true }),
    fc.integer({ min: 1, max: 3 }),
  )
  .map(([least, more, waves]) => ({
    ...even(least),
    edgeMm: Array.from({ length: 72 }, (_, i) => least + more * Math.sin((waves * Math.PI * i) / 72) ** 2),
  }));

describe('the bevel', () => {
  it('leaves of an even edge only what is thicker than the rim, and all of that behind it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2.2, max: 9, noNaN: true }),
        fc.double({ min: 2, max: 5, noNaN: true }),
        (edgeMm, rimMm) => {
          const found = bevelPosition(even(edgeMm), cut, rimMm, null);
          const shown = Math.max(0, edgeMm - rimMm);
          // Shares are tried in steps of 5 percent of the edge.
          expect(found?.placement.mostBehind.mm).toBeCloseTo(shown, 0);
          expect(
            (found?.placement.mostInFront.mm ?? 0) + (found?.placement.mostBehind.mm ?? 0),
          ).toBeGreaterThanOrEqual(shown - 1e-9);
        },
      ),
    );
  });

  it('shows no more of the edge on average than at any other share, but for what the bench can hold', () => {
    fc.assert(
      fc.property(anyEdge, fc.double({ min: 2, max: 5, noNaN: true }), (edge, rimMm) => {
        const found = bevelPosition(edge, cut, rimMm, null);
        if (found === null) throw new Error('The rim has a depth.');
        const rim = { depthMm: rimMm, grooveFromFrontMm: rimMm / 2 };
        const shown = ({ inFrontMm, behindMm }: typeof found.placement) =>
          inFrontMm.reduce((sum, mm, i) => sum + mm + (behindMm[i] ?? 0), 0) / inFrontMm.length;
        for (const shareFromFront of [0.2, 0.35, 0.5, 0.65, 0.8]) {
          const other = placeBevel(edge, { ...found.bevel, follows: 'share', shareFromFront }, rim);
          if (other === null || other.tooThin !== null) continue;
          expect(shown(found.placement)).toBeLessThanOrEqual(shown(other) + 0.051);
        }
      }),
    );
  });

  it('follows the curve of the rim where the edge holds it', () => {
    // 530 mm over a curve of 5 D at 1.530 is a radius of 106 mm, which an even edge of a front of that radius has.
    const radiusMm = 106;
    const sag = radiusMm - Math.sqrt(radiusMm ** 2 - 25 ** 2);
    const edge = { ...even(3), frontMm: Array.from({ length: 72 }, () => sag) };
    const found = bevelPosition(edge, cut, 3, 5);
    expect(found?.bevel.follows).toBe('curve');
    expect(found?.bevel.curveRadiusMm).toBeCloseTo(radiusMm, 6);
    expect(found?.placement.tooThin).toBeNull();
  });

  it('says where the edge is too thin for it', () => {
    const foot = bevelWidthMm({ heightMm: cut.bevelHeightMm, angleDeg: cut.bevelAngleDeg });
    const found = bevelPosition(even(foot - 0.3), cut, 3, null);
    expect(found?.placement.tooThin?.missingMm).toBeCloseTo(0.3, 6);
  });

  it('is left to the bench where the depth of the rim is not known', () => {
    expect(bevelPosition(even(3), cut, 0, 4)).toBeNull();
  });
});

/** How much of a convex region (a reading zone, a segment) lies inside an outline. Lengths in mm, areas in mm squared. */
import { keptOutline } from './keptOutline.ts';
import type { Outline } from './types.ts';

type Corner = readonly [x: number, y: number];

/** Area of a closed polygon, mm squared; positive when its corners run counter-clockwise. */
export function polygonAreaMm2(corners: readonly Corner[]): number {
  let twice = 0;
  corners.forEach(([x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length] as Corner;
    twice += x * nextY - nextX * y;
  });
  return twice / 2;
}

/**
 * Area common to an outline and a convex region whose corners run counter-clockwise, mm squared: the outline is cut
 * by each side of the region in turn (Sutherland and Hodgman), which is exact for any outline.
 */
export function commonAreaMm2(outline: Outline, region: readonly Corner[]): number {
  const { xMm, yMm } = keptOutline(outline);
  let left: Corner[] = Array.from(xMm, (x, i) => [x, yMm[i] as number]);
  region.forEach((from, i) => {
    const to = region[(i + 1) % region.length] as Corner;
    left = cutBySide(left, from, to);
  });
  return left.length < 3 ? 0 : polygonAreaMm2(left);
}

/** The part of a polygon to the left of the line from `from` to `to`. */
function cutBySide(corners: readonly Corner[], from: Corner, to: Corner): Corner[] {
  const side = ([x, y]: Corner) => (to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0]);
  const kept: Corner[] = [];
  corners.forEach((here, i) => {
    const next = corners[(i + 1) % corners.length] as Corner;
    const a = side(here);
    const b = side(next);
    if (a >= 0) kept.push(here);
    if (a >= 0 !== b >= 0) {
      const t = a / (a - b);
      kept.push([here[0] + t * (next[0] - here[0]), here[1] + t * (next[1] - here[1])]);
    }
  });
  return kept;
}

/** The leftmost and rightmost crossing of an outline with the horizontal at `yMm`; null where it misses. */
export function horizontalChord(
  outline: Outline,
  yMm: number,
): { readonly leftMm: number; readonly rightMm: number } | null {
  const points = keptOutline(outline);
  const n = points.xMm.length;
  let leftMm = Number.POSITIVE_INFINITY;
  let rightMm = Number.NEGATIVE_INFINITY;
  for (let i = 0, j = n - 1; i < n; j = i++) {
    const y0 = points.yMm[j] as number;
    const y1 = points.yMm[i] as number;
    if (Math.min(y0, y1) > yMm || Math.max(y0, y1) < yMm) continue;
    const x0 = points.xMm[j] as number;
    const x1 = points.xMm[i] as number;
    const x = y0 === y1 ? x1 : x0 + ((yMm - y0) / (y1 - y0)) * (x1 - x0);
    leftMm = Math.min(leftMm, x, y0 === y1 ? x0 : x);
    rightMm = Math.max(rightMm, x, y0 === y1 ? x0 : x);
  }
  return leftMm > rightMm ? null : { leftMm, rightMm };
}

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
  let left: Polygon = keptOutline(outline);
  region.forEach((from, i) => {
    left = cutBySide(left, from, region[(i + 1) % region.length] as Corner);
  });
  const { xMm, yMm } = left;
  if (xMm.length < 3) return 0;
  let twice = 0;
  for (let i = 0; i < xMm.length; i++) {
    const next = i + 1 === xMm.length ? 0 : i + 1;
    twice += (xMm[i] as number) * (yMm[next] as number) - (xMm[next] as number) * (yMm[i] as number);
  }
  return twice / 2;
}

/** Two lists of numbers: a list of corners each would be made anew for every side of a region of many. */
interface Polygon {
  readonly xMm: ArrayLike<number>;
  readonly yMm: ArrayLike<number>;
}

/** The part of a polygon to the left of the line from `from` to `to`; the same one where that is all of it. */
function cutBySide(polygon: Polygon, from: Corner, to: Corner): Polygon {
  const { xMm, yMm } = polygon;
  const [fromX, fromY] = from;
  const dx = to[0] - fromX;
  const dy = to[1] - fromY;
  const side = (i: number) => dx * ((yMm[i] as number) - fromY) - dy * ((xMm[i] as number) - fromX);
  const count = xMm.length;
  let first = 0;
  while (first < count && side(first) >= 0) first++;
  if (first === count) return polygon;
  const x: number[] = [];
  const y: number[] = [];
  let b = side(0);
  for (let i = 0; i < count; i++) {
    const next = i + 1 === count ? 0 : i + 1;
    const a = b;
    b = side(next);
    const hereX = xMm[i] as number;
    const hereY = yMm[i] as number;
    if (a >= 0) {
      x.push(hereX);
      y.push(hereY);
    }
    if (a >= 0 !== b >= 0) {
      const t = a / (a - b);
      x.push(hereX + t * ((xMm[next] as number) - hereX));
      y.push(hereY + t * ((yMm[next] as number) - hereY));
    }
  }
  return { xMm: x, yMm: y };
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

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

/**
 * Area common to an outline and an upright rectangle, mm squared. Each side of the outline gives the area beneath it,
 * held between the lower and the upper edge, which is exact for any outline and lists no corners.
 */
export function areaWithinMm2(
  outline: Outline,
  rectangle: {
    readonly left: number;
    readonly right: number;
    readonly bottom: number;
    readonly top: number;
  },
): number {
  const { xMm, yMm } = keptOutline(outline);
  const { left, right, bottom, top } = rectangle;
  const n = xMm.length;
  let area = 0;
  for (let i = 0, j = n - 1; i < n; j = i++) {
    const x0 = xMm[j] as number;
    const x1 = xMm[i] as number;
    if (x0 === x1 || (x0 <= left && x1 <= left) || (x0 >= right && x1 >= right)) continue;
    const y0 = yMm[j] as number;
    const slope = ((yMm[i] as number) - y0) / (x1 - x0);
    const from = Math.min(Math.max(x0, left), right);
    const to = Math.min(Math.max(x1, left), right);
    // An outline runs counter-clockwise, so its upper side runs leftwards.
    area += (from - to) * meanHeld(y0 + slope * (from - x0), y0 + slope * (to - x0), bottom, top);
  }
  // What rounding leaves of nothing is nothing.
  return area > 1e-9 ? area : 0;
}

/** Mean height above `bottom` of a straight line from one height to another, held between `bottom` and `top`. */
function meanHeld(one: number, other: number, bottom: number, top: number): number {
  const a = Math.min(Math.max(one, bottom), top) - bottom;
  const b = Math.min(Math.max(other, bottom), top) - bottom;
  // Nearly level: the quotient below would be of rounding alone.
  if (Math.abs(one - other) < 1e-6) return (a + b) / 2;
  const high = top - bottom;
  const above = Math.max(one, top) - Math.max(other, top);
  return ((a * a - b * b) / 2 + high * above) / (one - other);
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

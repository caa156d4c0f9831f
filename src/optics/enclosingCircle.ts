/**
 * The smallest circle round an outline: the smallest blank that any moving of the optical centre can reach. Farthest
 * points are added one by one and the circle through the two or three that hold it is kept (Welzl, by moving fronts).
 */
import { outlinePoints } from './outline.ts';
import type { Outline, PointMm } from './types.ts';

/** A circle in the front view, mm. */
export interface CircleMm {
  readonly xMm: number;
  readonly yMm: number;
  readonly radiusMm: number;
}

const TOUCH_MM = 1e-9;

/** The smallest circle round all points of the outline, mm from the origin of its radii. */
export function enclosingCircle(outline: Outline): CircleMm {
  const points = scattered(outline);
  const p = (i: number) => points[i] as PointMm;
  let circle: CircleMm = { ...p(0), radiusMm: 0 };
  for (let i = 1; i < points.length; i++) {
    if (holds(circle, p(i))) continue;
    circle = { ...p(i), radiusMm: 0 };
    for (let j = 0; j < i; j++) {
      if (holds(circle, p(j))) continue;
      circle = across(p(i), p(j));
      for (let k = 0; k < j; k++) if (!holds(circle, p(k))) circle = through(p(i), p(j), p(k));
    }
  }
  return circle;
}

/**
 * The points in leaps of about the golden section of the way round. One after the other along the rim, nearly every
 * point would lie outside the circle of those before, and each such point begins the search anew.
 */
function scattered(outline: Outline): readonly PointMm[] {
  const { xMm, yMm } = outlinePoints(outline);
  const count = xMm.length;
  let leap = Math.max(1, Math.round(count * 0.618));
  while (commonFactor(leap, count) > 1) leap++;
  return Array.from({ length: count }, (_, i) => {
    const at = (i * leap) % count;
    return { xMm: xMm[at] as number, yMm: yMm[at] as number };
  });
}

const commonFactor = (a: number, b: number): number => (b === 0 ? a : commonFactor(b, a % b));

function holds(circle: CircleMm, point: PointMm): boolean {
  return Math.hypot(point.xMm - circle.xMm, point.yMm - circle.yMm) <= circle.radiusMm + TOUCH_MM;
}

function across(a: PointMm, b: PointMm): CircleMm {
  const xMm = (a.xMm + b.xMm) / 2;
  const yMm = (a.yMm + b.yMm) / 2;
  return { xMm, yMm, radiusMm: Math.hypot(a.xMm - xMm, a.yMm - yMm) };
}

function through(a: PointMm, b: PointMm, c: PointMm): CircleMm {
  const bx = b.xMm - a.xMm;
  const by = b.yMm - a.yMm;
  const cx = c.xMm - a.xMm;
  const cy = c.yMm - a.yMm;
  const twice = 2 * (bx * cy - by * cx);
  // Three points on a line: the circle over the two farthest apart.
  if (Math.abs(twice) < 1e-12)
    return [across(a, b), across(a, c), across(b, c)].reduce((x, y) => (y.radiusMm > x.radiusMm ? y : x));
  const b2 = bx * bx + by * by;
  const c2 = cx * cx + cy * cy;
  const x = (cy * b2 - by * c2) / twice;
  const y = (bx * c2 - cx * b2) / twice;
  return { xMm: a.xMm + x, yMm: a.yMm + y, radiusMm: Math.hypot(x, y) };
}

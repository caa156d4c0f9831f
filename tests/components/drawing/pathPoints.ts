/**
 * Reads SVG path data back into points, y up again, so that tests measure what a browser would draw. Absolute
 * M, L, C, Q, A (its end only), H, V and Z; each curve gives 40 points.
 */
import type { PointMm } from '../../../src/optics/types.ts';

type Numbers = readonly number[];

/** Points of every subpath, in order. */
export function pathPoints(d: string): PointMm[] {
  const points: PointMm[] = [];
  let x = 0;
  let y = 0;
  const go = (toX: number, toY: number) => {
    x = toX;
    y = toY;
    points.push({ xMm: x, yMm: -y });
  };
  for (const [, letter = '', rest = ''] of d.matchAll(/([A-Z])([^A-Z]*)/g)) {
    const n: Numbers = [...rest.matchAll(/-?\d*\.?\d+/g)].map(Number);
    const at = (i: number) => n[i] ?? Number.NaN;
    if (letter === 'M' || letter === 'L') for (let i = 0; i < n.length; i += 2) go(at(i), at(i + 1));
    else if (letter === 'H') go(at(0), y);
    else if (letter === 'V') go(x, at(0));
    else if (letter === 'A') go(at(5), at(6));
    else if (letter === 'C') for (let i = 0; i < n.length; i += 6) cubic(n.slice(i, i + 6), x, y, go);
    else if (letter === 'Q') go(at(2), at(3));
    else if (letter !== 'Z') throw new Error(`No reading for the path command ${letter}.`);
  }
  return points;
}

function cubic(n: Numbers, x0: number, y0: number, go: (x: number, y: number) => void): void {
  const [x1 = 0, y1 = 0, x2 = 0, y2 = 0, x3 = 0, y3 = 0] = n;
  for (let k = 1; k <= 40; k++) {
    const t = k / 40;
    const u = 1 - t;
    const mix = (a: number, b: number, c: number, d: number) =>
      u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
    go(mix(x0, x1, x2, x3), mix(y0, y1, y2, y3));
  }
}

/** Width, height and edges of points, mm. */
export function extent(points: readonly PointMm[]) {
  const xs = points.map((p) => p.xMm);
  const ys = points.map((p) => p.yMm);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [bottom, top] = [Math.min(...ys), Math.max(...ys)];
  return { left, right, bottom, top, widthMm: right - left, heightMm: top - bottom };
}

/** Shortest distance from a point to the lines that join `points`, mm. */
export function distanceTo(points: readonly PointMm[], p: PointMm): number {
  let least = Number.POSITIVE_INFINITY;
  points.forEach((b, i) => {
    const a = points[i - 1] ?? b;
    const [dx, dy] = [b.xMm - a.xMm, b.yMm - a.yMm];
    const along = ((p.xMm - a.xMm) * dx + (p.yMm - a.yMm) * dy) / (dx * dx + dy * dy || 1);
    const t = Math.min(1, Math.max(0, along));
    least = Math.min(least, Math.hypot(p.xMm - a.xMm - t * dx, p.yMm - a.yMm - t * dy));
  });
  return least;
}

/**
 * Points to SVG path data: 1 user unit is 1 mm, y down, two decimals. A smooth contour becomes cubic curves with
 * the tangents of its own neighbouring points, by as few knots as stay within the tolerance, so that a page holds
 * some thirty curves instead of 360 corners.
 */
import type { PointMm } from '../../optics/types.ts';
import { at, type Contour } from './contour.ts';

/** What is left out of a drawn curve at most, mm: a quarter of the finest line. */
const TOLERANCE_MM = 0.04;

/** A number as SVG wants it: two decimals at most, no "-0". A shop writes millions: whole numbers are written fastest. */
export function num(value: number): string {
  const hundredths = Math.round(value * 100);
  const size = Math.abs(hundredths);
  const rest = size % 100;
  const whole = `${hundredths < 0 ? '-' : ''}${(size - rest) / 100}`;
  if (rest === 0) return whole;
  return rest % 10 === 0 ? `${whole}.${rest / 10}` : `${whole}.${rest < 10 ? '0' : ''}${rest}`;
}

/** A point as `x y` with y turned down. */
export function xy(point: PointMm): string {
  return `${num(point.xMm)} ${num(-point.yMm)}`;
}

interface Cubic {
  readonly from: PointMm;
  readonly c1: PointMm;
  readonly c2: PointMm;
  readonly to: PointMm;
}

function cubic(contour: Contour, i: number, stride: number, closed: boolean): Cubic {
  const from = at(contour, i);
  const to = at(contour, i + stride);
  const t0 = tangent(contour, i, closed);
  const t1 = tangent(contour, i + stride, closed);
  const k = stride / 3;
  return {
    from,
    c1: { xMm: from.xMm + t0.xMm * k, yMm: from.yMm + t0.yMm * k },
    c2: { xMm: to.xMm - t1.xMm * k, yMm: to.yMm - t1.yMm * k },
    to,
  };
}

/** Change of place for one step of the index; one-sided at the ends of an open arc. */
function tangent(contour: Contour, i: number, closed: boolean): PointMm {
  const before = closed ? i - 1 : Math.max(0, i - 1);
  const after = closed ? i + 1 : Math.min(contour.length - 1, i + 1);
  const a = at(contour, before);
  const b = at(contour, after);
  return { xMm: (b.xMm - a.xMm) / (after - before), yMm: (b.yMm - a.yMm) / (after - before) };
}

/** Whether the curve leaves a point between its ends by more than the tolerance: a whole shop asks this often. */
function misses(contour: Contour, i: number, stride: number, { from, c1, c2, to }: Cubic): boolean {
  for (let k = 1; k < stride; k++) {
    const t = k / stride;
    const u = 1 - t;
    const [a, b, c, d] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
    const p = at(contour, i + k);
    const x = a * from.xMm + b * c1.xMm + c * c2.xMm + d * to.xMm;
    const y = a * from.yMm + b * c1.yMm + c * c2.yMm + d * to.yMm;
    if ((p.xMm - x) ** 2 + (p.yMm - y) ** 2 > TOLERANCE_MM ** 2) return true;
  }
  return false;
}

function curves(contour: Contour, steps: number, closed: boolean): string {
  // Joined to one flat text: grown bit by bit, it would stay a chain of its bits, several times as large.
  const parts: string[] = [];
  for (let i = 0; i < steps; ) {
    let stride = Math.min(24, steps - i);
    let curve = cubic(contour, i, stride, closed);
    while (stride > 1 && misses(contour, i, stride, curve)) {
      stride = Math.max(1, Math.floor(stride * 0.75));
      curve = cubic(contour, i, stride, closed);
    }
    parts.push('C', xy(curve.c1), ' ', xy(curve.c2), ' ', xy(curve.to));
    i += stride;
  }
  return parts.join('');
}

/** Path data of a closed smooth contour, within 0.04 mm of each of its points. */
export function closedPath(contour: Contour): string {
  return `M${xy(at(contour, 0))}${curves(contour, contour.length, true)}Z`;
}

/** Path data of an open smooth arc, without its opening move when it goes on from a point already drawn. */
export function arcPath(arc: Contour, goOn = false): string {
  return `${goOn ? 'L' : 'M'}${xy(at(arc, 0))}${curves(arc, arc.length - 1, false)}`;
}

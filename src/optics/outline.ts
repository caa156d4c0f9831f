/**
 * Outlines: the cut shape of a lens as radii at equal angles from the boxed centre (types.ts), its box, and the
 * changes that keep it an outline. Between two radii the edge is the straight line that joins their points; at
 * 360 radii that is within 0.002 mm of a smooth rim. Boxing follows ISO 8624: A and B are the width and height
 * of the upright box, ED is twice the longest radius from the box's centre.
 */
import { directionDeg } from './angle.ts';
import type { Outline, PointMm } from './types.ts';

/** The box round an outline. Edges are in mm from the origin of the radii, which is the boxed centre when centred. */
export interface OutlineBox {
  /** Width and height of the box, mm. */
  readonly aMm: number;
  readonly bMm: number;
  /** Twice the longest radius from the box's own centre, mm. */
  readonly edMm: number;
  /** Direction of that radius, degrees counter-clockwise from +x, 0 to below 360. */
  readonly edAxisDeg: number;
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

interface Directions {
  readonly cos: Float64Array;
  readonly sin: Float64Array;
}

const directionsByCount = new Map<number, Directions>();

/** Cosines and sines of `count` equal angles from 0, counter-clockwise. Kept, since most outlines share a count. */
export function directions(count: number): Directions {
  const kept = directionsByCount.get(count);
  if (kept) return kept;
  const cos = new Float64Array(count);
  const sin = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    cos[i] = Math.cos((2 * Math.PI * i) / count);
    sin[i] = Math.sin((2 * Math.PI * i) / count);
  }
  const made = { cos, sin };
  directionsByCount.set(count, made);
  return made;
}

/** The i-th point of an outline, mm from the origin of its radii. `i` wraps round at either end. */
export function outlinePoint(outline: Outline, i: number): PointMm {
  const n = outline.radiiMm.length;
  const k = ((i % n) + n) % n;
  const { cos, sin } = directions(n);
  const r = outline.radiiMm[k] ?? Number.NaN;
  return { xMm: r * (cos[k] ?? 0), yMm: r * (sin[k] ?? 0) };
}

/** Points of an outline, mm from the origin of its radii. */
export interface OutlinePoints {
  readonly xMm: Float64Array;
  readonly yMm: Float64Array;
}

/** All points of an outline as two arrays, mm. */
export function outlinePoints(outline: Outline): OutlinePoints {
  const n = outline.radiiMm.length;
  const { cos, sin } = directions(n);
  const xMm = new Float64Array(n);
  const yMm = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const r = outline.radiiMm[i] as number;
    xMm[i] = r * (cos[i] as number);
    yMm[i] = r * (sin[i] as number);
  }
  return { xMm, yMm };
}

/** The box of an outline (ISO 8624), mm and degrees. ED is taken from the box's centre, wherever the origin is. */
export function box(outline: Outline): OutlineBox {
  const { xMm, yMm } = outlinePoints(outline);
  let minX = Number.POSITIVE_INFINITY;
  let maxX = Number.NEGATIVE_INFINITY;
  let minY = Number.POSITIVE_INFINITY;
  let maxY = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < xMm.length; i++) {
    const x = xMm[i] as number;
    const y = yMm[i] as number;
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  }
  const midX = (minX + maxX) / 2;
  const midY = (minY + maxY) / 2;
  let longest = -1;
  let edAxisDeg = 0;
  for (let i = 0; i < xMm.length; i++) {
    const dx = (xMm[i] as number) - midX;
    const dy = (yMm[i] as number) - midY;
    const r = Math.hypot(dx, dy);
    // A later radius must be clearly longer, so that rounding does not choose the axis of a circle.
    if (r > longest + 1e-9) {
      longest = r;
      edAxisDeg = directionDeg(dx, dy);
    }
  }
  return { aMm: maxX - minX, bMm: maxY - minY, edMm: 2 * longest, edAxisDeg, minX, maxX, minY, maxY };
}

/** The other eye's outline: left(a) = right(180 - a). Of an even count of radii, twice mirrored is unchanged. */
export function mirror(outline: Outline): Outline {
  const { radiiMm } = outline;
  const n = radiiMm.length;
  // Of an odd count, 180 degrees lies between two radii.
  if (n % 2 === 1) return { radiiMm: radiiMm.map((_, i) => radiusAt(outline, 180 - (i * 360) / n)) };
  return { radiiMm: radiiMm.map((_, i) => radiiMm[(n / 2 - i + n) % n] as number) };
}

/** Length of the edge, mm: the sum of the straight lines between neighbouring points. */
export function perimeterMm(outline: Outline): number {
  const { xMm, yMm } = outlinePoints(outline);
  const n = xMm.length;
  let sum = 0;
  for (let i = 0, j = n - 1; i < n; j = i++) {
    const dx = (xMm[i] as number) - (xMm[j] as number);
    const dy = (yMm[i] as number) - (yMm[j] as number);
    sum += Math.sqrt(dx * dx + dy * dy);
  }
  return sum;
}

/** Area inside the outline, mm squared: the triangles between neighbouring radii. */
export function areaMm2(outline: Outline): number {
  const r = outline.radiiMm;
  const n = r.length;
  let sum = 0;
  for (let i = 0, j = n - 1; i < n; j = i++) sum += (r[i] as number) * (r[j] as number);
  return (sum / 2) * Math.sin((2 * Math.PI) / n);
}

/** Radius of the edge in a direction, mm; `deg` counter-clockwise from +x, any value. */
export function radiusAt(outline: Outline, deg: number): number {
  const r = outline.radiiMm;
  const n = r.length;
  const at = (((deg % 360) + 360) % 360) * (n / 360);
  const i = Math.floor(at) % n;
  const a = r[i] as number;
  const b = r[(i + 1) % n] as number;
  // The ray meets the straight line between the two points, so the reciprocals mix by sines.
  const step = (2 * Math.PI) / n;
  const t = (at - Math.floor(at)) * step;
  return (Math.sin(step) * a * b) / (a * Math.sin(t) + b * Math.sin(step - t));
}

/** True when the point lies in the outline or on it. Coordinates from the origin of the radii, mm. */
export function inside(outline: Outline, point: PointMm): boolean {
  const r = Math.hypot(point.xMm, point.yMm);
  if (r === 0) return true;
  return r <= radiusAt(outline, directionDeg(point.xMm, point.yMm)) + 1e-9;
}

/**
 * Outlines from points and from other outlines: sampling a closed curve at equal angles, changing the count of
 * radii, turning, and moving the origin to the boxed centre. A curve must be seen whole from its origin (each
 * ray meets it once), as every spectacle lens is from its boxed centre.
 */
import { box, outlinePoints, radiusAt } from './outline.ts';
import type { Outline } from './types.ts';

interface Curve {
  readonly xMm: ArrayLike<number>;
  readonly yMm: ArrayLike<number>;
}

/**
 * Radii at `count` equal angles of a closed polyline given counter-clockwise, mm, its own origin kept. Null when
 * some ray from the origin meets the polyline more than once or not at all.
 */
export function outlineFromPoints(curve: Curve, count: number): Outline | null {
  const m = curve.xMm.length;
  const radiiMm = new Array<number>(count).fill(Number.NaN);
  const step = (2 * Math.PI) / count;
  let turned = 0;
  for (let i = 0; i < m; i++) {
    const j = (i + 1) % m;
    const x0 = curve.xMm[i] as number;
    const y0 = curve.yMm[i] as number;
    const x1 = curve.xMm[j] as number;
    const y1 = curve.yMm[j] as number;
    const cross = x0 * y1 - x1 * y0;
    const turn = Math.atan2(cross, x0 * x1 + y0 * y1);
    if (!(turn >= 0)) return null;
    turned += turn;
    const from = Math.atan2(y0, x0);
    for (let k = Math.ceil(from / step - 1e-12); k * step <= from + turn + 1e-12; k++) {
      const c = Math.cos(k * step);
      const s = Math.sin(k * step);
      const along = c * (y1 - y0) - s * (x1 - x0);
      const r = along === 0 ? Math.hypot(x0, y0) : cross / along;
      radiiMm[((k % count) + count) % count] = r;
    }
  }
  const once = Math.abs(turned - 2 * Math.PI) < 1e-6;
  return once && radiiMm.every((r) => Number.isFinite(r) && r > 0) ? { radiiMm } : null;
}

/** The outline with its origin at the boxed centre, and how far the origin moved (mm). */
export function recentre(outline: Outline): { outline: Outline; movedXMm: number; movedYMm: number } | null {
  let current = outline;
  let movedXMm = 0;
  let movedYMm = 0;
  // Sampling anew shifts the box by a hair, so the step is repeated until it is still.
  for (let pass = 0; pass < 6; pass++) {
    const b = box(current);
    const dx = (b.minX + b.maxX) / 2;
    const dy = (b.minY + b.maxY) / 2;
    if (Math.hypot(dx, dy) < 5e-4) break;
    movedXMm += dx;
    movedYMm += dy;
    const points = outlinePoints(outline);
    const moved = outlineFromPoints(
      { xMm: points.xMm.map((x) => x - movedXMm), yMm: points.yMm.map((y) => y - movedYMm) },
      outline.radiiMm.length,
    );
    if (!moved) return null;
    current = moved;
  }
  return { outline: current, movedXMm, movedYMm };
}

/** The same shape by `count` radii: a periodic cubic through neighbouring radii (Catmull-Rom), smooth as a rim is. */
export function resample(outline: Outline, count: number): Outline {
  const r = outline.radiiMm;
  const n = r.length;
  if (count === n) return outline;
  const radiiMm: number[] = [];
  for (let i = 0; i < count; i++) {
    const at = (i * n) / count;
    const k = Math.floor(at);
    const t = at - k;
    const p0 = r[(k - 1 + n) % n] as number;
    const p1 = r[k % n] as number;
    const p2 = r[(k + 1) % n] as number;
    const p3 = r[(k + 2) % n] as number;
    radiiMm.push(
      p1 + (t / 2) * (p2 - p0 + t * (2 * p0 - 5 * p1 + 4 * p2 - p3 + t * (3 * (p1 - p2) + p3 - p0))),
    );
  }
  return { radiiMm };
}

/** The outline turned counter-clockwise by `deg` about its origin; the box changes with it. */
export function rotate(outline: Outline, deg: number): Outline {
  const n = outline.radiiMm.length;
  return { radiiMm: outline.radiiMm.map((_, i) => radiusAt(outline, (i * 360) / n - deg)) };
}

/**
 * The contour of the right lens as points for drawing, and contours beside it. Front view, mm, y up, origin at
 * the boxed centre, counter-clockwise from +x (nasal), as in `optics/types.ts`.
 */
import { outlinePoint } from '../../optics/outline.ts';
import type { PointMm } from '../../optics/types.ts';

export type Contour = readonly PointMm[];

/** Points of a closed contour from radii at equal angles, mm. */
export function contourOf(radiiMm: readonly number[]): Contour {
  return radiiMm.map((_, i) => outlinePoint({ radiiMm }, i));
}

/**
 * The contour moved along its outward normals by `byMm` (negative: inwards). Meant for a few millimetres: it does
 * not cut off the loops that a large inward move makes in a sharp corner.
 */
export function beside(contour: Contour, byMm: number): Contour {
  return contour.map((p, i) => {
    const before = at(contour, i - 1);
    const after = at(contour, i + 1);
    const dx = after.xMm - before.xMm;
    const dy = after.yMm - before.yMm;
    const length = Math.sqrt(dx * dx + dy * dy) || 1;
    return { xMm: p.xMm + (dy / length) * byMm, yMm: p.yMm - (dx / length) * byMm };
  });
}

/** The i-th point; `i` wraps round at either end. */
export function at(contour: Contour, i: number): PointMm {
  const n = contour.length;
  return contour[i >= 0 && i < n ? i : ((i % n) + n) % n] as PointMm;
}

/**
 * Index of the point on the nasal (+x) or temporal (-x) side of the upright at `middleXMm` whose height is nearest
 * to `yMm`.
 */
export function indexAtHeight(
  contour: Contour,
  side: 'nasal' | 'temporal',
  yMm: number,
  middleXMm: number,
): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  contour.forEach((p, i) => {
    const off = Math.abs(p.yMm - yMm);
    if (p.xMm > middleXMm === (side === 'nasal') && off < least) {
      least = off;
      best = i;
    }
  });
  return best;
}

/** The points from one index to another, counter-clockwise, both included. */
export function arcBetween(contour: Contour, from: number, to: number): Contour {
  const n = contour.length;
  const count = (((to - from) % n) + n) % n;
  return Array.from({ length: count + 1 }, (_, k) => at(contour, from + k));
}

/** The contour moved by `xMm` to the viewer's right. */
export function shifted(contour: Contour, xMm: number): Contour {
  return contour.map((p) => ({ xMm: p.xMm + xMm, yMm: p.yMm }));
}

/** The point on the other side of the nose. */
export function mirrored(p: PointMm): PointMm {
  return { xMm: -p.xMm, yMm: p.yMm };
}

/** The stretch of a line through a lens that lies in its outline. */
import { outlinePoints } from '../../optics/outline.ts';
import type { Outline, PointMm } from '../../optics/types.ts';

/** Where the line through `origin` meets the outline: the outermost crossings either way, mm along `direction`. */
export function meridianChord(
  outline: Outline,
  origin: PointMm,
  direction: number,
): { from: number; to: number } | null {
  const { xMm, yMm } = outlinePoints(outline);
  const [c, s] = [Math.cos(direction), Math.sin(direction)];
  const n = xMm.length;
  let from = Number.POSITIVE_INFINITY;
  let to = Number.NEGATIVE_INFINITY;
  for (let i = 0, j = n - 1; i < n; j = i++) {
    const across = (k: number) =>
      ((yMm[k] as number) - origin.yMm) * c - ((xMm[k] as number) - origin.xMm) * s;
    const along = (k: number) =>
      ((xMm[k] as number) - origin.xMm) * c + ((yMm[k] as number) - origin.yMm) * s;
    const a = across(j);
    const b = across(i);
    // Rounding must not let a corner slip between two sides.
    if (Math.min(a, b) > 1e-9 || Math.max(a, b) < -1e-9) continue;
    const t = Math.abs(a - b) < 1e-9 ? 1 : a / (a - b);
    const at = along(j) + Math.min(1, Math.max(0, t)) * (along(i) - along(j));
    from = Math.min(from, at);
    to = Math.max(to, at);
  }
  return from < to ? { from, to } : null;
}

import { outlinePoint } from './outline.ts';
import type { Outline } from './types.ts';

/** Where a vertical line crosses a lens. */
export interface VerticalChord {
  /** Lowest and highest crossing, mm above the origin of the outline. */
  readonly bottomMm: number;
  readonly topMm: number;
}

/**
 * The lowest and highest point of an outline at `xMm` (mm from its origin), straight between its points; null where
 * the line misses the lens.
 */
export function verticalChord(outline: Outline, xMm: number): VerticalChord | null {
  let bottomMm = Number.POSITIVE_INFINITY;
  let topMm = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < outline.radiiMm.length; i++) {
    const a = outlinePoint(outline, i);
    const b = outlinePoint(outline, i + 1);
    if (Math.min(a.xMm, b.xMm) > xMm || Math.max(a.xMm, b.xMm) < xMm) continue;
    const along = a.xMm === b.xMm ? 0 : (xMm - a.xMm) / (b.xMm - a.xMm);
    const yMm = a.yMm + along * (b.yMm - a.yMm);
    bottomMm = Math.min(bottomMm, yMm);
    topMm = Math.max(topMm, yMm);
  }
  return topMm < bottomMm ? null : { bottomMm, topMm };
}

import { keptOutline } from './keptOutline.ts';
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
  const points = keptOutline(outline);
  const n = points.xMm.length;
  for (let i = 0; i < n; i++) {
    const next = i + 1 === n ? 0 : i + 1;
    const fromX = points.xMm[i] as number;
    const toX = points.xMm[next] as number;
    if ((fromX > xMm && toX > xMm) || (fromX < xMm && toX < xMm)) continue;
    const fromY = points.yMm[i] as number;
    const along = fromX === toX ? 0 : (xMm - fromX) / (toX - fromX);
    const yMm = fromY + along * ((points.yMm[next] as number) - fromY);
    bottomMm = Math.min(bottomMm, yMm);
    topMm = Math.max(topMm, yMm);
  }
  return topMm < bottomMm ? null : { bottomMm, topMm };
}

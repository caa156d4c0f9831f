/** Size of the lens after cutting: the outline with what the shop adds to its circumference. Lengths in mm. */
import { box, perimeterMm } from '../optics/outline.ts';
import type { Outline } from '../optics/types.ts';

export interface FinishedSize {
  readonly outlineCircumferenceMm: number;
  readonly circumferenceMm: number;
  readonly aMm: number;
  readonly bMm: number;
}

/**
 * An even offset all round by d adds 2 pi d to the circumference of any smooth convex outline and 2 d to A and B
 * (Steiner); a slightly hollow outline follows within rounding.
 */
export function finishedSize(outline: Outline, addedMm: number): FinishedSize {
  const { aMm, bMm } = box(outline);
  const outlineCircumferenceMm = perimeterMm(outline);
  return {
    outlineCircumferenceMm,
    circumferenceMm: outlineCircumferenceMm + addedMm,
    aMm: aMm + addedMm / Math.PI,
    bMm: bMm + addedMm / Math.PI,
  };
}

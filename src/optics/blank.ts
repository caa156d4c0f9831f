/**
 * Blanks: decentration by the box, the rule of thumb for the diameter, and the exact diameter that covers an
 * outline. Lengths in mm; places in the front view from the boxed centre. A blank's reference point may lie beside
 * the middle of the blank (offset), as in surfaced and progressive blanks.
 */
import { farthestPoint } from './farthestPoint.ts';
import { keptOutline } from './keptOutline.ts';
import type { Outline, PointMm } from './types.ts';

/** Spare glass all round for edging that the trade counts, mm across; some use 1. */
export const EDGING_ALLOWANCE_MM = 2;

/** How far a lens is centred inwards of the boxed centre, mm, positive nasal: (A + DBL)/2 - monocular PD. */
export function decentrationMm(box: { aMm: number; dblMm: number }, monocularPdMm: number): number {
  return (box.aMm + box.dblMm) / 2 - monocularPdMm;
}

/** How far above the boxed centre, mm: height from the lowest boxed tangent - B/2. */
export function raisingMm(heightMm: number, bMm: number): number {
  return heightMm - bMm / 2;
}

/** ED + 2 |decentration| + allowance, mm; `decentrationMm` is the length of the whole vector to be an upper bound. */
export function ruleOfThumbBlankMm(
  edMm: number,
  decentrationMm: number,
  allowanceMm = EDGING_ALLOWANCE_MM,
): number {
  return edMm + 2 * Math.abs(decentrationMm) + allowanceMm;
}

/** What has to be cut from a blank. */
export interface BlankQuestion {
  readonly outline: Outline;
  /** Lens reference point from the boxed centre. */
  readonly reference: PointMm;
  /** The blank's own reference point from the middle of the blank; absent: in the middle. */
  readonly offset?: PointMm;
  /** mm across; 2 where absent. */
  readonly allowanceMm?: number;
}

/** Which diameter covers the outline, and where it is tightest. */
export interface BlankNeed {
  readonly neededMm: number;
  /** Direction of the tightest point from the boxed centre, degrees. */
  readonly closestAtDeg: number;
}

/** The cover of a blank of a given diameter. */
export interface BlankCover extends BlankNeed {
  readonly usedMm: number;
  /** Radius left at the tightest point beyond the allowance, mm; below 0 where the blank is short. */
  readonly spareMm: number;
}

/** The exact smallest blank, mm: twice the farthest outline point from the middle of the blank, plus the allowance. */
export function blankNeeded(question: BlankQuestion): BlankNeed {
  const points = keptOutline(question.outline);
  const cx = question.reference.xMm - (question.offset?.xMm ?? 0);
  const cy = question.reference.yMm - (question.offset?.yMm ?? 0);
  const at = farthestPoint(points, cx, cy);
  const radiusMm = Math.sqrt(((points.xMm[at] as number) - cx) ** 2 + ((points.yMm[at] as number) - cy) ** 2);
  return {
    neededMm: 2 * radiusMm + (question.allowanceMm ?? EDGING_ALLOWANCE_MM),
    closestAtDeg: (at * 360) / points.xMm.length,
  };
}

/** How a blank of `usedMm` covers the outline. */
export function blankCover(question: BlankQuestion, usedMm: number): BlankCover {
  return coverBy(blankNeeded(question), usedMm);
}

/** The smallest of the offered diameters that covers, or the largest where none does; null when none is offered. */
export function chooseBlank(question: BlankQuestion, diametersMm: readonly number[]): BlankCover | null {
  if (diametersMm.length === 0) return null;
  const need = blankNeeded(question);
  const { neededMm } = need;
  // A diameter counts as enough within rounding of the last digit that is shown.
  const enough = diametersMm.filter((d) => d >= neededMm - 1e-6);
  const usedMm = enough.length > 0 ? Math.min(...enough) : Math.max(...diametersMm);
  return coverBy(need, usedMm);
}

const coverBy = (need: BlankNeed, usedMm: number): BlankCover => ({
  ...need,
  usedMm,
  spareMm: (usedMm - need.neededMm) / 2,
});

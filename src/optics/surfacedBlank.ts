/**
 * Surfaced lenses may have their optical centre moved on the blank, so that the blank sits better round the
 * outline: where the middle of the blank should go, within the movement that the laboratory allows.
 */
import { blankNeeded, EDGING_ALLOWANCE_MM } from './blank.ts';
import { type CircleMm, enclosingCircle } from './enclosingCircle.ts';
import type { Outline, PointMm } from './types.ts';

/** The smallest surfaced blank and how its optical centre is moved to reach it. */
export interface SurfacedBlank {
  /** Diameter, mm. */
  readonly neededMm: number;
  /** The optical centre from the middle of the blank, mm in the front view. */
  readonly movedCentre: PointMm;
  /** Tightest point, degrees from the boxed centre. */
  readonly closestAtDeg: number;
}

const circles = new WeakMap<Outline, CircleMm>();

/**
 * The smallest blank for a surfaced lens whose optical centre may be at most `mostMoveMm` from the middle of the
 * blank. With room enough it is the smallest circle round the outline; else the best place on the rim of that room.
 */
export function surfacedBlank(
  outline: Outline,
  reference: PointMm,
  mostMoveMm: number,
  allowanceMm = EDGING_ALLOWANCE_MM,
): SurfacedBlank {
  let circle = circles.get(outline);
  if (!circle) {
    circle = enclosingCircle(outline);
    circles.set(outline, circle);
  }
  const wanted = { xMm: reference.xMm - circle.xMm, yMm: reference.yMm - circle.yMm };
  const distance = Math.hypot(wanted.xMm, wanted.yMm);
  const movedCentre = distance <= mostMoveMm ? wanted : bestOnRim(outline, reference, wanted, mostMoveMm);
  return { ...blankNeeded({ outline, reference, offset: movedCentre, allowanceMm }), movedCentre };
}

/** The need is convex in the offset, so on the rim of the room it has one valley, near the wanted direction. */
function bestOnRim(outline: Outline, reference: PointMm, wanted: PointMm, mostMoveMm: number): PointMm {
  const towards = Math.atan2(wanted.yMm, wanted.xMm);
  const at = (turn: number): PointMm => ({
    xMm: mostMoveMm * Math.cos(towards + turn),
    yMm: mostMoveMm * Math.sin(towards + turn),
  });
  const need = (turn: number) => blankNeeded({ outline, reference, offset: at(turn) }).neededMm;
  let low = -Math.PI / 2;
  let high = Math.PI / 2;
  for (let pass = 0; pass < 30; pass++) {
    const a = low + (high - low) / 3;
    const b = high - (high - low) / 3;
    if (need(a) < need(b)) high = b;
    else low = a;
  }
  return at((low + high) / 2);
}

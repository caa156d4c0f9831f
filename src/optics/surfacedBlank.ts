/**
 * Surfaced lenses may have their optical centre moved on the blank, so that the blank sits better round the
 * outline: where the middle of the blank should go, within the movement that the laboratory allows.
 */
import { blankNeeded, EDGING_ALLOWANCE_MM } from './blank.ts';
import { type CircleMm, enclosingCircle } from './enclosingCircle.ts';
import { keptOutline } from './keptOutline.ts';
import type { OutlinePoints } from './outline.ts';
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
 * blank.
 */
export function surfacedBlank(
  outline: Outline,
  reference: PointMm,
  mostMoveMm: number,
  allowanceMm = EDGING_ALLOWANCE_MM,
): SurfacedBlank {
  const offset = movedCentre(outline, reference, mostMoveMm);
  return { ...blankNeeded({ outline, reference, offset, allowanceMm }), movedCentre: offset };
}

/**
 * Where the optical centre of the smallest blank lies, mm from its middle in the front view. With room enough to move
 * it is the smallest circle round the outline; else the best place on the rim of that room.
 */
export function movedCentre(outline: Outline, reference: PointMm, mostMoveMm: number): PointMm {
  let circle = circles.get(outline);
  if (!circle) {
    circle = enclosingCircle(outline);
    circles.set(outline, circle);
  }
  const wanted = { xMm: reference.xMm - circle.xMm, yMm: reference.yMm - circle.yMm };
  const distance = Math.hypot(wanted.xMm, wanted.yMm);
  return distance <= mostMoveMm ? wanted : bestOnRim(outline, reference, wanted, mostMoveMm);
}

/** The need is convex in the offset, so on the rim of the room it has one valley, near the wanted direction. */
function bestOnRim(outline: Outline, reference: PointMm, wanted: PointMm, mostMoveMm: number): PointMm {
  const towards = Math.atan2(wanted.yMm, wanted.xMm);
  const at = (turn: number): PointMm => ({
    xMm: mostMoveMm * Math.cos(towards + turn),
    yMm: mostMoveMm * Math.sin(towards + turn),
  });
  const middle = (turn: number): PointMm => {
    const offset = at(turn);
    return { xMm: reference.xMm - offset.xMm, yMm: reference.yMm - offset.yMm };
  };
  let points: OutlinePoints = keptOutline(outline);
  let low = -Math.PI / 2;
  let high = Math.PI / 2;
  for (let pass = 0; pass < 30; pass++) {
    if (points.xMm.length > FEW)
      points = farPoints(points, middle((low + high) / 2), (mostMoveMm * (high - low)) / 2);
    const a = low + (high - low) / 3;
    const b = high - (high - low) / 3;
    if (neededMm(points, middle(a)) < neededMm(points, middle(b))) high = b;
    else low = a;
  }
  return at((low + high) / 2);
}

/** So few points are asked sooner than sifted. */
const FEW = 6;

const neededMm = (points: OutlinePoints, middle: PointMm): number =>
  2 * Math.sqrt(farthest2(points, middle)) + EDGING_ALLOWANCE_MM;

/** The points that can be farthest from some place within `reachMm` of `from`: no other decides there. */
function farPoints(points: OutlinePoints, from: PointMm, reachMm: number): OutlinePoints {
  const least = Math.sqrt(farthest2(points, from)) - 2 * reachMm - 1e-6;
  const least2 = least > 0 ? least * least : 0;
  const xMm: number[] = [];
  const yMm: number[] = [];
  for (let i = 0; i < points.xMm.length; i++) {
    const x = points.xMm[i] as number;
    const y = points.yMm[i] as number;
    const dx = x - from.xMm;
    const dy = y - from.yMm;
    if (dx * dx + dy * dy < least2) continue;
    xMm.push(x);
    yMm.push(y);
  }
  return { xMm: Float64Array.from(xMm), yMm: Float64Array.from(yMm) };
}

/** Square of the distance to the farthest point, mm squared. */
function farthest2({ xMm, yMm }: OutlinePoints, from: PointMm): number {
  let most = -1;
  for (let i = 0; i < xMm.length; i++) {
    const dx = (xMm[i] as number) - from.xMm;
    const dy = (yMm[i] as number) - from.yMm;
    const d2 = dx * dx + dy * dy;
    if (d2 > most) most = d2;
  }
  return most;
}

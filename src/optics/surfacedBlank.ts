/**
 * Surfaced lenses may have their optical centre moved on the blank, so that the blank sits better round the
 * outline: where the middle of the blank should go, within the movement that the laboratory allows.
 */
import { blankNeeded, EDGING_ALLOWANCE_MM } from './blank.ts';
import { type CircleMm, enclosingCircle } from './enclosingCircle.ts';
import { farthestPoint } from './farthestPoint.ts';
import { keptOutline } from './keptOutline.ts';
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

/**
 * The need is convex in the offset, so on the rim of the room it has one valley, near the wanted direction. Few of the
 * outline's points decide it: the best place for those seen so far is sought, and the point farthest from there joins
 * them until it is one of them. No other point then asks for more, so that place is the best of all.
 */
function bestOnRim(outline: Outline, reference: PointMm, wanted: PointMm, mostMoveMm: number): PointMm {
  const towards = Math.atan2(wanted.yMm, wanted.xMm);
  const at = (turn: number): PointMm => ({
    xMm: mostMoveMm * Math.cos(towards + turn),
    yMm: mostMoveMm * Math.sin(towards + turn),
  });
  const points = keptOutline(outline);
  const seen: PointMm[] = [];
  let turn = 0;
  for (let pass = 0; pass < MOST_POINTS; pass++) {
    const offset = at(turn);
    const from = { xMm: reference.xMm - offset.xMm, yMm: reference.yMm - offset.yMm };
    const index = farthestPoint(points, from.xMm, from.yMm);
    const farthest = { xMm: points.xMm[index] as number, yMm: points.yMm[index] as number };
    if (distance2(farthest, from) <= most2(seen, from) + 1e-9) break;
    seen.push(farthest);
    turn = bestTurn(seen.map((point) => sinusoid(point, reference, mostMoveMm, towards)));
  }
  return at(turn);
}

/** Far more than decide any place of a blank, a bound for outlines that cannot be. */
const MOST_POINTS = 60;

/** Half the square of a point's distance from the middle of the blank, less what no turn changes: `level + cos * cos(turn) + sin * sin(turn)`. */
interface Sinusoid {
  readonly level: number;
  readonly cos: number;
  readonly sin: number;
}

function sinusoid(point: PointMm, reference: PointMm, mostMoveMm: number, towards: number): Sinusoid {
  const x = point.xMm - reference.xMm;
  const y = point.yMm - reference.yMm;
  const c = Math.cos(towards);
  const s = Math.sin(towards);
  return { level: (x * x + y * y) / 2, cos: mostMoveMm * (x * c + y * s), sin: mostMoveMm * (y * c - x * s) };
}

/** The turn at which the highest of the sinusoids is lowest, within a quarter turn either way. */
function bestTurn(sinusoids: readonly Sinusoid[]): number {
  let low = -Math.PI / 2;
  let high = Math.PI / 2;
  for (let pass = 0; pass < 30; pass++) {
    const a = low + (high - low) / 3;
    const b = high - (high - low) / 3;
    if (highest(sinusoids, a) < highest(sinusoids, b)) high = b;
    else low = a;
  }
  return (low + high) / 2;
}

function highest(sinusoids: readonly Sinusoid[], turn: number): number {
  const c = Math.cos(turn);
  const s = Math.sin(turn);
  let most = Number.NEGATIVE_INFINITY;
  for (const { level, cos, sin } of sinusoids) {
    const here = level + cos * c + sin * s;
    if (here > most) most = here;
  }
  return most;
}

const distance2 = (one: PointMm, other: PointMm): number =>
  (one.xMm - other.xMm) ** 2 + (one.yMm - other.yMm) ** 2;

const most2 = (points: readonly PointMm[], from: PointMm): number =>
  points.reduce((most, point) => Math.max(most, distance2(point, from)), Number.NEGATIVE_INFINITY);

/** The power to order so that the wearer gets what was prescribed: vertex distance first, then tilt and wrap. */
import type { Design } from '../catalogue/design.ts';
import type { ShopHabits } from '../catalogue/shop.ts';
import { toPowerVector } from '../optics/prescription.ts';
import { orderFor } from '../optics/tilt.ts';
import type { Eye, PrismVector, SpheroCylinder } from '../optics/types.ts';
import { atWornVertex } from '../optics/vertex.ts';
import { round2 } from '../rules/round.ts';

/** Half of the tightest power tolerance in use (0.12 D): a smaller change is not ordered. */
const LEAST_CHANGE_D = 0.06;
/** Change of prism below which nothing is ordered for it alone, prism dioptres. */
const LEAST_CHANGE_PRISM = 0.1;

export interface WearingPosition {
  readonly eye: Eye;
  readonly faceFormDeg: number;
  readonly pantoscopicTiltDeg: number;
  /** mm; null: not known, and then left alone. */
  readonly testedVertexMm: number | null;
  readonly wornVertexMm: number | null;
}

export interface Compensated {
  readonly power: SpheroCylinder;
  readonly prism: PrismVector;
}

/** The ordered power as it must be at the distance from the eye at which it is worn, D; the same where that is not known. */
export function atFit(
  power: SpheroCylinder,
  { testedVertexMm, wornVertexMm }: WearingPosition,
): SpheroCylinder {
  if (testedVertexMm === null || wornVertexMm === null) return power;
  return atWornVertex(power, testedVertexMm, wornVertexMm);
}

/**
 * What to order instead, rounded to 0.01 D and whole degrees; null where it would be the same within 0.06 D and
 * 0.1 prism dioptre. `wrap` is the prism that the tilted lens itself adds.
 * Tilt is compensated for single vision alone: makers of other designs do it in their own calculation.
 */
export function compensate(
  ordered: Compensated,
  design: Design,
  index: number,
  position: WearingPosition,
  habits: ShopHabits,
  wrap: PrismVector,
): Compensated | null {
  const moved = atFit(ordered.power, position);
  const turned = design.kind === 'single-vision' && isTilted(position, habits);
  const wanted = turned
    ? orderFor({ power: moved, prism: ordered.prism }, position, index, wrap)
    : { power: moved, prism: ordered.prism };
  const prismChange = Math.hypot(wanted.prism.x - ordered.prism.x, wanted.prism.y - ordered.prism.y);
  if (changeD(wanted.power, ordered.power) < LEAST_CHANGE_D && prismChange < LEAST_CHANGE_PRISM) return null;
  return rounded(wanted);
}

/** Whether a lens is worn at an angle that the shop compensates for. */
export const isTilted = ({ faceFormDeg, pantoscopicTiltDeg }: WearingPosition, habits: ShopHabits) =>
  Math.max(faceFormDeg, Math.abs(pantoscopicTiltDeg)) >= habits.compensateFromDeg;

/** Largest change of power in any meridian, D: mean power and cross cylinder together. */
function changeD(one: SpheroCylinder, other: SpheroCylinder): number {
  const a = toPowerVector(one);
  const b = toPowerVector(other);
  return Math.abs(a.meanD - b.meanD) + Math.hypot(a.j0D - b.j0D, a.j45D - b.j45D);
}

const rounded = ({ power, prism }: Compensated): Compensated => ({
  power: {
    sphereD: round2(power.sphereD),
    cylinderD: round2(power.cylinderD),
    axisDeg: round2(power.cylinderD) === 0 ? 180 : Math.round(power.axisDeg) || 180,
  },
  prism: { x: round2(prism.x), y: round2(prism.y) },
});

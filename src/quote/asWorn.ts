/** The power to order so that the wearer gets what was prescribed: vertex distance first, then tilt and wrap. */
import type { Design } from '../catalogue/design.ts';
import type { ShopHabits } from '../catalogue/shop.ts';
import { toPowerVector } from '../optics/prescription.ts';
import { orderFor } from '../optics/tilt.ts';
import type { Eye, PrismVector, SpheroCylinder } from '../optics/types.ts';
import { atWornVertex } from '../optics/vertex.ts';
import { round2 } from '../rules/round.ts';
import type { Compensated } from '../rules/situation.ts';

/** Half of the tightest power tolerance in use (0.12 D): a smaller change is not ordered. */
const LEAST_CHANGE_D = 0.06;
/** Change of prism below which nothing is ordered for it alone, prism dioptres. */
const LEAST_CHANGE_PRISM = 0.1;

/** Half of the last digit that is ordered, D and prism dioptres. */
const LEAST_SEEN = 0.005;

export interface WearingPosition {
  readonly eye: Eye;
  readonly faceFormDeg: number;
  readonly pantoscopicTiltDeg: number;
  /** mm; null: not known, and then left alone. */
  readonly testedVertexMm: number | null;
  readonly wornVertexMm: number | null;
}

/** A lens as prescribed. */
export interface Prescribed {
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
  ordered: Prescribed,
  design: Design,
  index: number,
  position: WearingPosition,
  habits: ShopHabits,
  wrap: PrismVector,
): Compensated | null {
  const { testedVertexMm: testedMm, wornVertexMm: wornMm } = position;
  const moved = { power: atFit(ordered.power, position), prism: ordered.prism };
  const wanted =
    design.kind === 'single-vision' && isTilted(position, habits)
      ? orderFor(moved, position, index, wrap)
      : moved;
  if (
    changeD(wanted.power, ordered.power) < LEAST_CHANGE_D &&
    prismChange(wanted, ordered) < LEAST_CHANGE_PRISM
  )
    return null;
  return {
    ...rounded(wanted),
    turned: isSeen(wanted, moved),
    moved: testedMm !== null && wornMm !== null && isSeen(moved, ordered) ? { testedMm, wornMm } : null,
  };
}

/** Whether a lens is worn at an angle that the shop compensates for. */
export const isTilted = ({ faceFormDeg, pantoscopicTiltDeg }: WearingPosition, habits: ShopHabits) =>
  Math.max(faceFormDeg, Math.abs(pantoscopicTiltDeg)) >= habits.compensateFromDeg;

const prismChange = ({ prism }: Prescribed, { prism: from }: Prescribed) =>
  Math.hypot(prism.x - from.x, prism.y - from.y);

/** Whether one step changes a figure as it is rounded. */
const isSeen = (one: Prescribed, from: Prescribed) =>
  changeD(one.power, from.power) >= LEAST_SEEN || prismChange(one, from) >= LEAST_SEEN;

/** Largest change of power in any meridian, D: mean power and cross cylinder together. */
function changeD(one: SpheroCylinder, other: SpheroCylinder): number {
  const a = toPowerVector(one);
  const b = toPowerVector(other);
  return Math.abs(a.meanD - b.meanD) + Math.hypot(a.j0D - b.j0D, a.j45D - b.j45D);
}

const rounded = ({ power, prism }: Prescribed): Prescribed => ({
  power: {
    sphereD: round2(power.sphereD),
    cylinderD: round2(power.cylinderD),
    axisDeg: round2(power.cylinderD) === 0 ? 180 : Math.round(power.axisDeg) || 180,
  },
  prism: { x: round2(prism.x), y: round2(prism.y) },
});

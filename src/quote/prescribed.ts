/** A prescription as asked becomes the powers that a use is ordered with. */
import type { Design, Use } from '../catalogue/design.ts';
import type { ShopHabits } from '../catalogue/shop.ts';
import { sphericalEquivalentD, toMinusCylinder } from '../optics/prescription.ts';
import { addPrisms, NO_PRISM } from '../optics/prism.ts';
import { prismFromBase } from '../optics/prismBase.ts';
import type { Eye, SpheroCylinder } from '../optics/types.ts';
import type { EyePrescription } from '../rules/situation.ts';
import type { EyeRequest, PrescriptionRequest } from './request.ts';

const PLANO: SpheroCylinder = { sphereD: 0, cylinderD: 0, axisDeg: 180 };

/** The prescription of one eye with every absence named: powers in D, prism as a vector. Of a balance lens nothing is read. */
export function readEye(eye: Eye, written: EyeRequest): EyePrescription {
  const balance = written.balance ?? false;
  const asked = balance ? {} : written;
  const cylinderD = asked.cylinder ?? 0;
  return {
    sphereD: asked.sphere ?? null,
    cylinderD,
    axisDeg: cylinderD === 0 ? 180 : asked.axis || 180,
    addD: asked.add ?? null,
    prism: addPrisms(NO_PRISM, ...(asked.prism ?? []).map((prism) => prismFromBase(eye, prism))),
    balance,
    leftOut: balance && hasPower(written),
  };
}

const hasPower = ({ sphere, cylinder, axis, add, prism }: EyeRequest): boolean =>
  [sphere, cylinder, axis, add].some((value) => value !== undefined && value !== null) ||
  (prism ?? []).length > 0;

/** Both eyes; without a prescription, eyes without any power known. */
export const readPrescription = (asked: PrescriptionRequest | null) => ({
  right: readEye('right', asked?.right ?? {}),
  left: readEye('left', asked?.left ?? {}),
});

/** Distance power of an eye, D; a balance lens takes the other eye's spherical equivalent to a quarter. */
function distancePower(own: EyePrescription, other: EyePrescription): SpheroCylinder | null {
  if (own.sphereD !== null)
    return toMinusCylinder({ sphereD: own.sphereD, cylinderD: own.cylinderD, axisDeg: own.axisDeg });
  if (!own.balance || other.sphereD === null) return null;
  const mean = sphericalEquivalentD({ ...PLANO, sphereD: other.sphereD, cylinderD: other.cylinderD });
  return { ...PLANO, sphereD: Math.round(mean * 4) / 4 };
}

/** What is ordered for one eye. */
export interface OrderedPower {
  /** At the reference point, minus cylinder, D; null: not known. */
  readonly power: SpheroCylinder | null;
  /** Add that the design is ordered with, D; 0 where it has none. */
  readonly addD: number;
}

/**
 * Power at the reference point and add of one eye for a use. Near takes the whole add, intermediate the shop's
 * share of it (half is common practice), an office design its own share at the fitting cross.
 */
export function orderedPower(
  own: EyePrescription,
  other: EyePrescription,
  use: Use,
  design: Design,
  habits: ShopHabits,
): OrderedPower {
  if (use === 'none') return { power: PLANO, addD: 0 };
  const distance = distancePower(own, other);
  const prescribedAddD = own.addD ?? (own.balance ? other.addD : null) ?? 0;
  if (design.corridor !== null || design.segment !== null) {
    const shareD = (design.corridor?.addShareAtCross ?? 0) * prescribedAddD;
    return { power: more(distance, shareD), addD: prescribedAddD };
  }
  const share = use === 'near' ? 1 : use === 'intermediate' ? habits.intermediateAddShare : 0;
  return { power: more(distance, share * prescribedAddD), addD: 0 };
}

const more = (power: SpheroCylinder | null, extraD: number): SpheroCylinder | null =>
  power && { ...power, sphereD: power.sphereD + extraD };

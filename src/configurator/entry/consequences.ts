/** What follows from the powers as entered, before any lens is made: the powers of the use, and what a PD is worth. */
import { nearCentrationMm } from '../../optics/nearCentration.ts';
import { sphericalEquivalentD } from '../../optics/prescription.ts';
import { prismOfMisplacedCentre } from '../../optics/prism.ts';
import { CENTRE_OF_ROTATION_MM } from '../../optics/sharpView.ts';
import type { Eye, SpheroCylinder } from '../../optics/types.ts';
import { monocular } from '../../quote/placement.ts';
import { orderedPower, readPrescription } from '../../quote/prescribed.ts';
import type { PairRequest } from '../../quote/request.ts';
import type { ShopData } from '../shopData.ts';

export interface EyeConsequence {
  /** At the reference point for the chosen use; null: not known yet. */
  readonly ordered: SpheroCylinder | null;
  /** Whether the use makes it another power than that for distance. */
  readonly changed: boolean;
  /** Horizontal prism that 1 mm of error in the place of the centre makes, prism dioptres to 0.01. */
  readonly perMmPrism: number | null;
  /** Near PD by the geometry of convergence where the lenses need one and none was entered, mm to 0.1. */
  readonly nearPdMm: number | null;
}

/** What follows for each eye of a pair; nothing of it where no power is asked for. */
export function consequencesOf(
  { prescription, fit, lenses }: PairRequest,
  { designs, shop: { habits } }: ShopData,
): Readonly<Record<Eye, EyeConsequence>> {
  const design = designs.find(({ id }) => id === lenses.design);
  const usesNearPd = lenses.use === 'near' || Boolean(design?.corridor ?? design?.segment);
  const eyes = readPrescription(prescription);
  const distance = monocular(fit?.pd);
  const of = (eye: Eye, other: Eye): EyeConsequence => {
    if (design === undefined || lenses.use === 'none')
      return { ordered: null, changed: false, perMmPrism: null, nearPdMm: null };
    const { power } = orderedPower(eyes[eye], eyes[other], lenses.use, design, habits);
    const far = orderedPower(eyes[eye], eyes[other], 'distance', SINGLE(design), habits).power;
    return {
      ordered: power,
      changed: power !== null && far !== null && power.sphereD !== far.sphereD,
      // Nothing is felt behind a balance lens.
      perMmPrism:
        power && !eyes[eye].balance
          ? Number(Math.abs(prismOfMisplacedCentre(power, { xMm: 1, yMm: 0 }).x).toFixed(2))
          : null,
      nearPdMm:
        !usesNearPd || power === null || distance === null || fit?.nearPd !== undefined
          ? null
          : Number(nearCentrationMm(distance[eye], sight(sphericalEquivalentD(power))).toFixed(1)),
    };
  };
  const sight = (powerD: number) => ({
    workingMm: habits.nearDistanceMm,
    rotationMm: CENTRE_OF_ROTATION_MM,
    powerD,
  });
  return { right: of('right', 'left'), left: of('left', 'right') };
}

/** The design as one without a near part. */
const SINGLE = (design: ShopData['designs'][number]) => ({ ...design, corridor: null, segment: null });

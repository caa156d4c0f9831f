import { strongestMeridianD } from '../optics/prescription.ts';
import { round2 } from './round.ts';
import { eachEye, type Rule } from './rule.ts';
import type { EyeSituation, Situation } from './situation.ts';

/** Where no height was measured, the optical centre goes where this shop usually puts it: said, and minded if strong. */
export const heightAssumed: Rule = {
  id: 'height-assumed',
  asks: 'lens',
  clearedBy: 'person',
  check: (situation) =>
    situation.use === 'none' || situation.design.kind !== 'single-vision'
      ? []
      : eachEye(situation, (one) =>
          isAssumed(one)
            ? {
                message: 'datum',
                level: isStrong(situation) ? 'caution' : 'note',
                eye: one.eye,
                figures: {
                  aboveMm: round2(one.reference?.yMm ?? 0),
                  // Prentice: 1 mm is 0.1 cm.
                  perMmPrism: perMmPrism(one),
                },
              }
            : null,
        ),
};

const strongestAbsD = ({ ordered }: EyeSituation) =>
  ordered === null ? 0 : Math.abs(strongestMeridianD(ordered));

const perMmPrism = (one: EyeSituation) => round2(strongestAbsD(one) / 10);

/** Nothing is assumed of a lens without power, which has no centre, and nothing is felt behind a balance lens. */
const isAssumed = (one: EyeSituation) =>
  one.reference !== null && one.fittingHeightMm === null && !one.prescribed.balance && perMmPrism(one) > 0;

/** One measurement gives both heights, so that the stronger eye decides for both. */
const isStrong = ({ right, left, habits }: Situation) =>
  [right, left].some((one) => isAssumed(one) && strongestAbsD(one) >= habits.vertexFromD);

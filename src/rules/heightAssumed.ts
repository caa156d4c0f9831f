import { strongestMeridianD } from '../optics/prescription.ts';
import { round2 } from './round.ts';
import { eachEye, type Rule } from './rule.ts';

/** Where no height was measured, the optical centre goes where this shop usually puts it: said, and minded if strong. */
export const heightAssumed: Rule = {
  id: 'height-assumed',
  asks: 'lens',
  clearedBy: 'person',
  check: (situation) =>
    situation.use === 'none' || situation.design.kind !== 'single-vision'
      ? []
      : eachEye(situation, ({ eye, ordered, reference, fittingHeightMm }) => {
          if (ordered === null || reference === null || fittingHeightMm !== null) return null;
          const strongestD = Math.abs(strongestMeridianD(ordered));
          return {
            message: 'datum',
            level: strongestD >= situation.habits.vertexFromD ? 'caution' : 'note',
            eye,
            figures: {
              aboveMm: round2(reference.yMm),
              // Prentice: 1 mm is 0.1 cm.
              perMmPrism: round2(strongestD / 10),
            },
          };
        }),
};

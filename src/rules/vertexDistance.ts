import { strongestMeridianD } from '../optics/prescription.ts';
import { round2 } from './round.ts';
import { eachEye, type Rule } from './rule.ts';

/** A strong lens changes its effect with its distance from the eye. */
export const vertexDistance: Rule = {
  id: 'vertex-distance',
  asks: 'lens',
  clearedBy: 'person',
  check: (situation) =>
    situation.vertexDistanceMm !== null
      ? []
      : eachEye(situation, ({ eye, ordered, prescribed }) => {
          const strongestD = round2(ordered === null || prescribed.balance ? 0 : strongestMeridianD(ordered));
          return Math.abs(strongestD) >= situation.habits.vertexFromD
            ? {
                message: 'unknown',
                level: 'caution',
                eye,
                figures: { strongestD, fromAbsD: situation.habits.vertexFromD },
              }
            : null;
        }),
};

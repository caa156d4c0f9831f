import { strongestMeridianD, toMinusCylinder } from '../optics/prescription.ts';
import { round2 } from './round.ts';
import { eachEye, type Rule } from './rule.ts';

/** Strongest meridian that the material is made in. */
export const materialRange: Rule = {
  id: 'material-range',
  asks: 'lens',
  clearedBy: 'choice',
  check: (situation) =>
    eachEye(situation, ({ eye, ordered }) => {
      if (ordered === null) return null;
      const { from, to } = situation.material.powerD;
      const { sphereD, cylinderD } = toMinusCylinder(ordered);
      if (sphereD <= to && sphereD + cylinderD >= from) return null;
      return {
        message: 'power',
        level: 'stop',
        eye,
        figures: {
          material: situation.material.name,
          strongestD: round2(strongestMeridianD(ordered)),
          fromD: from,
          toD: to,
        },
      };
    }),
};

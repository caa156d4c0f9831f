import { round2 } from './round.ts';
import { eachEye, type Rule } from './rule.ts';

/** The uncut lens must cover the outline round its centre, with the allowance for edging. */
export const blankTooSmall: Rule = {
  id: 'blank-too-small',
  asks: 'lens',
  clearedBy: 'choice',
  check: (situation) =>
    eachEye(situation, ({ eye, lens }) => {
      if (lens === null || lens.blank.spareMm >= 0) return null;
      const { neededMm, usedMm, spareMm, closestAtDeg, kind } = lens.blank;
      return {
        message: kind,
        level: 'stop',
        eye,
        figures: {
          material: situation.material.name,
          neededMm,
          largestMm: usedMm,
          shortMm: round2(-spareMm),
          atDeg: closestAtDeg,
        },
      };
    }),
};

import { round2 } from './round.ts';
import type { Rule } from './rule.ts';

/** The two lenses of a pair should have one front curve, or nearly. */
export const baseCurvePair: Rule = {
  id: 'base-curve-pair',
  asks: 'lens',
  clearedBy: 'choice',
  check({ right, left, habits }) {
    if (right.lens === null || left.lens === null) return [];
    const differenceD = round2(Math.abs(right.lens.baseCurveD - left.lens.baseCurveD));
    return differenceD > habits.baseCurveDifferenceD
      ? [
          {
            message: 'differ',
            level: 'caution',
            eye: 'both',
            figures: {
              differenceAbsD: differenceD,
              rightD: right.lens.baseCurveD,
              leftD: left.lens.baseCurveD,
              mostAbsD: habits.baseCurveDifferenceD,
            },
          },
        ]
      : [];
  },
};

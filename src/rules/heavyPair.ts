import { round1 } from './round.ts';
import type { Rule } from './rule.ts';

/** Grams that rest on the nose. */
export const heavyPair: Rule = {
  id: 'heavy-pair',
  asks: 'lens',
  clearedBy: 'choice',
  check({ right, left, habits, frame }) {
    if (right.lens === null || left.lens === null) return [];
    const lensesG = round1(right.lens.massG + left.lens.massG);
    return lensesG >= habits.heavyFromG
      ? [
          {
            // The mass of the shopper's own frame is not known.
            message: frame.id === null ? 'lenses' : 'heavy',
            level: 'caution',
            eye: 'both',
            figures: { lensesG, pairG: round1(lensesG + frame.massG), fromG: habits.heavyFromG },
          },
        ]
      : [];
  },
};

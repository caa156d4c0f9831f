import type { Rule } from './rule.ts';
import { sharpAngles, sharpTo } from './sharpAngle.ts';

/** A single vision lens that is sharp only a little way around straight ahead. */
export const sharpView: Rule = {
  id: 'sharp-view',
  asks: 'lens',
  clearedBy: 'choice',
  notesOnly: true,
  check(situation) {
    const { leastSharpAngleDeg: leastDeg } = situation.habits;
    // Most lenses pass at the one angle that is asked about: only of the rest the angle itself is looked for.
    if (sharpTo(situation, leastDeg) !== false) return [];
    const angles = sharpAngles(situation);
    if (angles === null || angles.leastDeg >= leastDeg) return [];
    const figures = { angleDeg: angles.leastDeg, leastDeg };
    const least = (eye: typeof angles.right) => Math.min(...eye.map(({ angleDeg }) => angleDeg));
    const narrower = least(angles.right) <= least(angles.left) ? situation.right : situation.left;
    const baseCurveD = narrower.lens?.baseCurveD ?? 0;
    return situation.stock === null
      ? [{ message: 'surfaced', level: 'note', eye: 'both', figures }]
      : [{ message: 'stock', level: 'note', eye: 'both', figures: { ...figures, baseCurveD } }];
  },
};

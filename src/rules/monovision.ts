import { sphericalEquivalentD } from '../optics/prescription.ts';
import { round2 } from './round.ts';
import { type Rule, seesWithBoth } from './rule.ts';

/** How near the difference of the eyes must come to the add to look like one eye for far and one for near, D. */
const NEAR_ENOUGH_D = 0.25;

/** One eye set for far and the other for near looks like a slip; where it is meant, the prescriber says so. */
export const monovision: Rule = {
  id: 'monovision',
  asks: 'lens',
  clearedBy: 'person',
  check(situation) {
    const { right, left, use } = situation;
    if (use === 'none' || !seesWithBoth(situation)) return [];
    if (right.ordered === null || left.ordered === null) return [];
    const addD = Math.max(right.prescribed.addD ?? 0, left.prescribed.addD ?? 0);
    const differenceD = round2(
      Math.abs(sphericalEquivalentD(right.ordered) - sphericalEquivalentD(left.ordered)),
    );
    return addD > 0 && Math.abs(differenceD - addD) <= NEAR_ENOUGH_D
      ? [
          {
            message: 'looks-so',
            level: 'caution',
            eye: 'both',
            figures: { differenceAbsD: differenceD, addD },
          },
        ]
      : [];
  },
};

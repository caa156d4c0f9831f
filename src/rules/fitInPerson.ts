import { sphericalEquivalentD, strongestMeridianD } from '../optics/prescription.ts';
import { prismAmount } from '../optics/prism.ts';
import type { Outcome } from './finding.ts';
import { round2 } from './round.ts';
import { eachEye, type Rule } from './rule.ts';

/** Very strong lenses, prism and very different eyes are measured in person in this shop. */
export const fitInPerson: Rule = {
  id: 'fit-in-person',
  asks: 'lens',
  clearedBy: 'person',
  check(situation) {
    const { habits, right, left } = situation;
    if (situation.use === 'none') return [];
    const single = eachEye(situation, ({ eye, ordered, prescribed }) => {
      const found: Outcome[] = [];
      const strongestD = round2(ordered === null ? 0 : strongestMeridianD(ordered));
      if (Math.abs(strongestD) >= habits.inPersonFromD)
        found.push({
          message: 'strong',
          level: 'caution',
          eye,
          figures: { strongestD, fromAbsD: habits.inPersonFromD },
        });
      const prism = round2(prismAmount(prescribed.prism));
      if (prism > 0 && prism >= habits.inPersonPrism)
        found.push({
          message: 'prism',
          level: 'caution',
          eye,
          figures: { prism, fromPrism: habits.inPersonPrism },
        });
      return found;
    });
    if (right.ordered === null || left.ordered === null) return single;
    const differenceD = round2(
      Math.abs(sphericalEquivalentD(right.ordered) - sphericalEquivalentD(left.ordered)),
    );
    return differenceD >= habits.anisometropiaFromD
      ? [
          ...single,
          {
            message: 'eyes-differ',
            level: 'caution',
            eye: 'both',
            figures: { differenceAbsD: differenceD, fromAbsD: habits.anisometropiaFromD },
          },
        ]
      : single;
  },
};

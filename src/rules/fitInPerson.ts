import { sphericalEquivalentD, strongestMeridianD } from '../optics/prescription.ts';
import { prismAmount } from '../optics/prism.ts';
import type { Outcome } from './finding.ts';
import { round2 } from './round.ts';
import { eachEye, type Rule, seesWithBoth } from './rule.ts';
import type { EyeSituation, Situation } from './situation.ts';

/** Very strong lenses, prism and very different eyes are measured in person in this shop. */
export const fitInPerson: Rule = {
  id: 'fit-in-person',
  asks: 'lens',
  clearedBy: 'person',
  check(situation) {
    const { habits } = situation;
    if (situation.use === 'none') return [];
    const single = eachEye(situation, ({ eye, ordered, prescribed }) => {
      const found: Outcome[] = [];
      const strongestD = round2(ordered === null || prescribed.balance ? 0 : strongestMeridianD(ordered));
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
    if (!seesWithBoth(situation)) return single;
    return [...single, ...prismBetween(situation), ...powersApart(situation)];
  },
};

/**
 * Prism that the eyes have to bridge between them, where both have some: two bases in, or two out, add up; one base up
 * and one down do too, and the same base up before both moves the picture and parts nothing. The difference of the two
 * vectors, which texts call relative prism (from memory).
 */
function prismBetween({ habits, right, left }: Situation): readonly Outcome[] {
  const has = ({ prescribed }: EyeSituation) => round2(prismAmount(prescribed.prism)) > 0;
  if (!has(right) || !has(left)) return [];
  const horizontalPrism = round2(Math.abs(right.prescribed.prism.x - left.prescribed.prism.x));
  const verticalPrism = round2(Math.abs(right.prescribed.prism.y - left.prescribed.prism.y));
  const prism = round2(Math.hypot(horizontalPrism, verticalPrism));
  if (prism === 0 || prism < habits.inPersonPrism) return [];
  const figures = { prism, horizontalPrism, verticalPrism, fromPrism: habits.inPersonPrism };
  return [{ message: 'prism-between', level: 'caution', eye: 'both', figures }];
}

function powersApart({ habits, right, left }: Situation): readonly Outcome[] {
  if (right.ordered === null || left.ordered === null) return [];
  const differenceAbsD = round2(
    Math.abs(sphericalEquivalentD(right.ordered) - sphericalEquivalentD(left.ordered)),
  );
  if (differenceAbsD < habits.anisometropiaFromD) return [];
  const figures = { differenceAbsD, fromAbsD: habits.anisometropiaFromD };
  return [{ message: 'eyes-differ', level: 'caution', eye: 'both', figures }];
}

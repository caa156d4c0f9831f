import { type Rule, seesWithBoth } from './rule.ts';

/** Unequal adds, or an add on one eye, are rare and sometimes meant: confirmed, never refused. */
export const addsDiffer: Rule = {
  id: 'adds-differ',
  asks: 'lens',
  clearedBy: 'person',
  check(situation) {
    const { right, left, use } = situation;
    if (use === 'none' || use === 'distance' || !seesWithBoth(situation)) return [];
    const rightD = right.prescribed.addD ?? 0;
    const leftD = left.prescribed.addD ?? 0;
    if (rightD === leftD) return [];
    const one = rightD === 0 || leftD === 0;
    const eye = rightD === 0 ? 'left' : leftD === 0 ? 'right' : 'both';
    return [{ message: one ? 'one-eye' : 'unequal', level: 'caution', eye, figures: { rightD, leftD } }];
  },
};

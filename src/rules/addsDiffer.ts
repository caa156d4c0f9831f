import type { Rule } from './rule.ts';

/** Unequal adds, or an add on one eye, are rare and sometimes meant: confirmed, never refused. */
export const addsDiffer: Rule = {
  id: 'adds-differ',
  asks: 'lens',
  clearedBy: 'person',
  check({ right, left, use }) {
    if (use === 'none' || use === 'distance') return [];
    const rightD = right.prescribed.addD ?? 0;
    const leftD = left.prescribed.addD ?? 0;
    if (rightD === leftD || right.prescribed.balance || left.prescribed.balance) return [];
    const one = rightD === 0 || leftD === 0;
    const eye = rightD === 0 ? 'left' : leftD === 0 ? 'right' : 'both';
    return [{ message: one ? 'one-eye' : 'unequal', level: 'caution', eye, figures: { rightD, leftD } }];
  },
};

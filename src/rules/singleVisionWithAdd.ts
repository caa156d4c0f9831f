import type { Rule } from './rule.ts';

/** An add is prescribed, but these lenses leave it out: the wearer should know which distance they are for. */
export const singleVisionWithAdd: Rule = {
  id: 'single-vision-with-add',
  asks: 'lens',
  clearedBy: 'person',
  check: ({ use, design, right, left }) => {
    const addD = Math.max(right.prescribed.addD ?? 0, left.prescribed.addD ?? 0);
    return design.kind === 'single-vision' && use === 'distance' && addD > 0
      ? [{ message: 'distance-only', level: 'note', eye: 'both', figures: { addD } }]
      : [];
  },
};

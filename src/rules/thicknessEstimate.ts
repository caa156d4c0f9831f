import type { Rule } from './rule.ts';

/** The surface of a progressive is its maker's, and a segment has a ledge of its own: thickness is an estimate. */
export const thicknessEstimate: Rule = {
  id: 'thickness-estimate',
  asks: 'lens',
  clearedBy: 'person',
  check: ({ design, right, left }) => {
    const estimate = right.lens?.estimate ?? left.lens?.estimate ?? null;
    return estimate === null
      ? []
      : [{ message: estimate, level: 'note', eye: 'both', figures: { design: design.name } }];
  },
};

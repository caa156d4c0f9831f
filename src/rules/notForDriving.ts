import type { Rule } from './rule.ts';

/** Lenses made for a screen or a page blur the road. */
export const notForDriving: Rule = {
  id: 'not-for-driving',
  check: ({ design, use }) =>
    design.kind === 'office' || use === 'near' || use === 'intermediate'
      ? [{ message: 'near-lens', level: 'note', eye: 'both', figures: { design: design.name } }]
      : [],
};

import type { Rule } from './rule.ts';

/** Many screens give polarised light: through a polarising lens they darken or vanish at some angles. */
export const polarisedScreens: Rule = {
  id: 'polarised-screens',
  asks: 'options',
  clearedBy: 'choice',
  check: ({ tint }) =>
    tint?.polarised ? [{ message: 'screens', level: 'note', eye: 'both', figures: { tint: tint.name } }] : [],
};

import type { Rule } from './rule.ts';

/** The lower part of a progressive, office or bifocal lens blurs the ground: a caution about stairs. */
export const stairs: Rule = {
  id: 'stairs',
  check: ({ design }) =>
    design.corridor !== null || design.segment !== null
      ? [{ message: design.kind, level: 'note', eye: 'both', figures: { design: design.name } }]
      : [],
};

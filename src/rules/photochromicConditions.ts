import type { Rule } from './rule.ts';

/** Photochromic lenses darken with ultraviolet light and less in heat: what the declared states say, no more. */
export const photochromicConditions: Rule = {
  id: 'photochromic-conditions',
  asks: 'options',
  clearedBy: 'choice',
  check: ({ tint }) =>
    tint?.kind === 'photochromic'
      ? [{ message: 'windshield-and-heat', level: 'note', eye: 'both', figures: { tint: tint.name } }]
      : [],
};

import type { Rule } from './rule.ts';

/** Children and people with one good eye: impact-resistant material only (AAP/AAO joint statement). */
export const impactResistance: Rule = {
  id: 'impact-resistance',
  asks: 'lens',
  clearedBy: 'choice',
  check: ({ wearer, material }) =>
    wearer !== 'adult' && !material.impactResistant
      ? [{ message: wearer, level: 'stop', eye: 'both', figures: { material: material.name } }]
      : [],
};

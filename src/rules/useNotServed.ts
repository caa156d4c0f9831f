import type { Rule } from './rule.ts';

/** A design is made for certain uses. */
export const useNotServed: Rule = {
  id: 'use-not-served',
  check: ({ use, design }) =>
    design.uses.includes(use)
      ? []
      : [
          {
            message: 'refused',
            level: 'stop',
            eye: 'both',
            figures: { design: design.name, use, serves: design.uses.join(', ') },
          },
        ],
};

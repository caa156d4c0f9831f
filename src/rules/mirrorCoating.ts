import type { Rule } from './rule.ts';

/** A mirror reflects at the front face; a stack that takes reflections away there undoes it. */
export const mirrorCoating: Rule = {
  id: 'mirror-coating',
  asks: 'options',
  clearedBy: 'choice',
  check: ({ tint, coating }) =>
    tint?.mirrored && coating?.faces === 'both'
      ? [
          {
            message: 'front-face',
            level: 'stop',
            eye: 'both',
            figures: { tint: tint.name, coating: coating.name },
          },
        ]
      : [],
};

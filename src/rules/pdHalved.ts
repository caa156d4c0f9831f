import { round2 } from './round.ts';
import type { Rule } from './rule.ts';

/** One number for both eyes is halved; faces are not even, and strong or progressive lenses show it. */
export const pdHalved: Rule = {
  id: 'pd-halved',
  asks: 'lens',
  clearedBy: 'person',
  check: ({ pdHalved: halved, right, design, use }) =>
    halved && use !== 'none' && right.pdMm !== null
      ? [
          {
            message: design.corridor === null ? 'halved' : 'progressive',
            level: design.corridor === null ? 'note' : 'caution',
            eye: 'both',
            figures: { halfMm: round2(right.pdMm) },
          },
        ]
      : [],
};

import { reflectancePerSurface } from '../optics/reflection.ts';
import { round2 } from './round.ts';
import type { Rule } from './rule.ts';

/** From this index on uncoated faces reflect a third more than standard plastic: common practice to coat them. */
const HIGH_INDEX = 1.59;

/** Reflections of an uncoated high-index lens. */
export const uncoatedHighIndex: Rule = {
  id: 'uncoated-high-index',
  asks: 'options',
  clearedBy: 'choice',
  check: ({ material, coating }) =>
    material.ne >= HIGH_INDEX && (coating === null || coating.faces === 'none')
      ? [
          {
            message: 'reflects',
            level: 'note',
            eye: 'both',
            figures: {
              material: material.name,
              reflectancePercent: round2(100 * reflectancePerSurface(material.ne)),
            },
          },
        ]
      : [],
};

import type { Rule } from './rule.ts';

/** A material holds a groove or a hole, or it does not. */
export const mountingMaterial: Rule = {
  id: 'mounting-material',
  asks: 'lens',
  clearedBy: 'choice',
  check: ({ material, frame }) =>
    material.mountings.includes(frame.mounting)
      ? []
      : [
          {
            message: frame.mounting,
            level: 'stop',
            eye: 'both',
            figures: { material: material.name },
          },
        ],
};

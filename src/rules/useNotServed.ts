import { type Rule, servesUse } from './rule.ts';

/** A design is made for certain uses. */
export const useNotServed: Rule = {
  id: 'use-not-served',
  asks: 'lens',
  clearedBy: 'choice',
  check: (situation) =>
    servesUse(situation)
      ? []
      : [
          {
            message: 'refused',
            level: 'stop',
            eye: 'both',
            figures: {
              design: situation.design.name,
              use: situation.use,
              serves: situation.design.uses.join(', '),
            },
          },
        ],
};

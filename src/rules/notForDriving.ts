import { type Rule, servesUse } from './rule.ts';

/** Lenses made for a screen or a page blur the road. */
export const notForDriving: Rule = {
  id: 'not-for-driving',
  asks: 'lens',
  clearedBy: 'person',
  check: (situation) =>
    servesUse(situation) && (situation.use === 'near' || situation.use === 'intermediate')
      ? [
          {
            message: 'near-lens',
            level: 'note',
            eye: 'both',
            figures: { design: situation.design.name, use: situation.use },
          },
        ]
      : [],
};

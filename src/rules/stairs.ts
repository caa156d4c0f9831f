import { type Rule, servesUse } from './rule.ts';

/** The lower part of a progressive, office or bifocal lens blurs the ground: a caution about stairs. */
export const stairs: Rule = {
  id: 'stairs',
  asks: 'lens',
  clearedBy: 'person',
  check: (situation) =>
    servesUse(situation) && (situation.design.corridor !== null || situation.design.segment !== null)
      ? [
          {
            message: situation.design.kind,
            level: 'note',
            eye: 'both',
            figures: { design: situation.design.name },
          },
        ]
      : [],
};

import { eachEye, type Rule } from './rule.ts';

/** A stock lens has the thickness of its blank: where that is under a limit it cannot be used. */
export const lensTooThin: Rule = {
  id: 'lens-too-thin',
  asks: 'lens',
  clearedBy: 'choice',
  check: (situation) =>
    eachEye(situation, ({ eye, lens }) =>
      (lens?.shortfalls ?? []).map(({ at, missingMm, atDeg }) => ({
        message: at,
        level: 'stop' as const,
        eye,
        figures: { material: situation.material.name, missingMm, atDeg },
      })),
    ),
};

import { eachEye, type Rule } from './rule.ts';

/** No lens of this power can be had or cut at all, with what stands in the way. */
export const lensRefused: Rule = {
  id: 'lens-refused',
  asks: 'lens',
  clearedBy: 'choice',
  check: (situation) =>
    eachEye(situation, ({ eye, refusal }) =>
      refusal === null
        ? null
        : {
            message: refusal.reason,
            level: 'stop',
            eye,
            figures: { material: situation.material.name, ...refusal.figures },
          },
    ),
};

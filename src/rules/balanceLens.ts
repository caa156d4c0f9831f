import { eachEye, type Rule } from './rule.ts';

/** A balance lens has no prescription of its own. */
export const balanceLens: Rule = {
  id: 'balance-lens',
  asks: 'lens',
  clearedBy: 'person',
  check: (situation) =>
    eachEye(situation, ({ eye, prescribed, ordered }) =>
      prescribed.balance && situation.use !== 'none'
        ? {
            message: prescribed.leftOut ? 'left-out' : 'confirm',
            level: 'caution',
            eye,
            figures: { sphereD: ordered?.sphereD ?? 0 },
          }
        : null,
    ),
};

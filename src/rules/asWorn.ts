import { prismAmount } from '../optics/prism.ts';
import { prismToPolar } from '../optics/prismBase.ts';
import { round2 } from './round.ts';
import { eachEye, type Rule } from './rule.ts';

/** Tilt and wrap change what a lens does: says what is ordered instead, or that it cannot be. */
export const asWorn: Rule = {
  id: 'as-worn',
  asks: 'lens',
  clearedBy: 'choice',
  check: (situation) =>
    eachEye(situation, ({ eye, compensated, ordered, lens }) => {
      if (compensated === null || ordered === null) return null;
      const figures = {
        faceFormDeg: situation.frame.faceFormDeg,
        sphereD: round2(compensated.power.sphereD),
        cylinderD: round2(compensated.power.cylinderD),
        prism: round2(prismAmount(compensated.prism)),
        baseDeg: Math.round(prismToPolar(compensated.prism).baseDeg),
        axisDeg: Math.round(compensated.power.axisDeg) || 180,
      };
      return lens?.blank.kind === 'stock'
        ? { message: 'stock', level: 'caution', eye, figures }
        : { message: 'compensated', level: 'note', eye, figures };
    }),
};

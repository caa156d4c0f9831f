import { writePower } from '../optics/notation/write.ts';
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
      const { amount, baseDeg } = prismToPolar(compensated.prism);
      const prism = round2(amount);
      const figures = {
        faceFormDeg: situation.frame.faceFormDeg,
        tiltDeg: situation.tiltDeg,
        cause: !compensated.moved ? 'tilt' : compensated.turned ? 'both' : 'distance',
        ...compensated.moved,
        prescribed: writePower(ordered),
        order: writePower(compensated.power),
        prism,
        baseDeg: round2(baseDeg),
      };
      if (lens?.blank.kind === 'stock') return { message: 'stock', level: 'caution', eye, figures };
      return { message: prism === 0 ? 'power' : 'power-and-prism', level: 'note', eye, figures };
    }),
};

import { round2 } from './round.ts';
import { eachEye, type Rule } from './rule.ts';

/** A height taken from the lowest tangent of the lens cannot exceed the lens, nor the centre lie outside it. */
export const measurementOutsideLens: Rule = {
  id: 'measurement-outside-lens',
  asks: 'lens',
  clearedBy: 'choice',
  check: (situation) =>
    eachEye(situation, ({ eye, fittingHeightMm, segmentHeightMm, reference }) => {
      const bMm = situation.frame.bMm;
      const heightMm = Math.max(fittingHeightMm ?? 0, segmentHeightMm ?? 0);
      if (heightMm >= bMm) return { message: 'height', level: 'stop', eye, figures: { heightMm, bMm } };
      const outMm = round2(Math.abs(reference?.xMm ?? 0));
      const halfMm = round2(situation.frame.aMm / 2);
      return outMm >= halfMm
        ? { message: 'pd', level: 'stop', eye, figures: { decentrationMm: outMm, halfMm } }
        : null;
    }),
};

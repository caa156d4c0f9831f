import { FRAME_LEEWAY_D } from '../optics/baseCurve.ts';
import { toolReadingD } from '../optics/toolIndex.ts';
import { round2 } from './round.ts';
import { eachEye, type Rule } from './rule.ts';

/** A rim is bent to its frame curve; a front much flatter or steeper springs it. Both are read at the tool index. */
export const frameCurve: Rule = {
  id: 'frame-curve',
  asks: 'lens',
  clearedBy: 'choice',
  check: (situation) =>
    eachEye(situation, ({ eye, lens }) => {
      const { frameCurveD, mounting } = situation.frame;
      if (lens === null || frameCurveD === null || mounting !== 'full') return null;
      const lensD = round2(toolReadingD(lens.baseCurveD, situation.material.ne));
      const differenceD = round2(Math.abs(lensD - frameCurveD));
      return differenceD > FRAME_LEEWAY_D
        ? {
            message: lensD < frameCurveD ? 'flatter' : 'steeper',
            level: 'caution',
            eye,
            figures: { lensD, frameD: frameCurveD, differenceAbsD: differenceD, mostAbsD: FRAME_LEEWAY_D },
          }
        : null;
    }),
};

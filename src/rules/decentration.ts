import { nasalSign } from '../optics/prismBase.ts';
import { round2 } from './round.ts';
import { eachEye, type Rule } from './rule.ts';
import type { Situation } from './situation.ts';

/** Decentration from which a minus lens is noticeably thicker at one side, mm: common practice. */
const FROM_MM = 4;

/** A frame much wider than the eyes are apart makes one side of the lens thick. */
export const decentration: Rule = {
  id: 'decentration',
  asks: 'lens',
  clearedBy: 'choice',
  check: (situation) =>
    eachEye(situation, ({ eye, lens, reference, ordered }) => {
      const bothPdMm = wholePdMm(situation);
      if (lens === null || reference === null || ordered === null || bothPdMm === null) return null;
      const inMm = round2(nasalSign(eye) * reference.xMm);
      return Math.abs(inMm) >= FROM_MM && ordered.sphereD < 0
        ? {
            message: inMm > 0 ? 'in' : 'out',
            level: 'note',
            eye,
            figures: {
              decentrationMm: Math.abs(inMm),
              thickestMm: lens.thickest.mm,
              thinnestMm: lens.thinnest.mm,
              framePdMm: round2(situation.frame.aMm + situation.frame.dblMm),
              pdMm: round2(bothPdMm),
            },
          }
        : null;
    }),
};

const wholePdMm = ({ right, left }: Situation): number | null =>
  right.pdMm === null || left.pdMm === null ? null : right.pdMm + left.pdMm;

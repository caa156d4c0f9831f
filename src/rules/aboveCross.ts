import { verticalChord } from '../optics/outlineChord.ts';
import { round2 } from './round.ts';
import { eachEye, type Rule } from './rule.ts';

/** Lens above the fitting cross, straight up to the bevel apex, for distance vision. */
export const aboveCross: Rule = {
  id: 'above-cross',
  asks: 'lens',
  clearedBy: 'choice',
  check(situation) {
    const { corridor, name } = situation.design;
    if (corridor === null) return [];
    return eachEye(situation, ({ eye, cross, outline }) => {
      if (cross === null) return null;
      // A cross above the lens has nothing above it.
      const aboveMm = Math.max(
        0,
        round2((verticalChord(outline, cross.xMm)?.topMm ?? cross.yMm) - cross.yMm),
      );
      return aboveMm < corridor.leastAboveCrossMm
        ? {
            message: 'high',
            level: 'stop',
            eye,
            figures: {
              design: name,
              aboveMm,
              leastMm: corridor.leastAboveCrossMm,
              shortMm: round2(corridor.leastAboveCrossMm - aboveMm),
            },
          }
        : null;
    });
  },
};

import { leastFittingHeightMm } from '../optics/readingZone.ts';
import { round2 } from './round.ts';
import { eachEye, type Rule } from './rule.ts';

/** Lens below the fitting cross for corridor and reading zone; the declared least height governs. */
export const fittingHeight: Rule = {
  id: 'fitting-height',
  asks: 'lens',
  clearedBy: 'choice',
  check(situation) {
    const { corridor, name } = situation.design;
    if (corridor === null) return [];
    const declaredMm = corridor.leastFittingHeightMm;
    const leastMm = declaredMm ?? round2(leastFittingHeightMm(corridor.lengthMm));
    return eachEye(situation, ({ eye, fittingHeightMm: heightMm }) =>
      heightMm !== null && heightMm < leastMm
        ? {
            message: declaredMm === null ? 'low-computed' : 'low',
            level: 'stop',
            eye,
            figures: {
              design: name,
              heightMm,
              leastMm,
              shortMm: round2(leastMm - heightMm),
              corridorMm: corridor.lengthMm,
            },
          }
        : null,
    );
  },
};

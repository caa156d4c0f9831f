import { meridianPowerD } from '../optics/prescription.ts';
import { round2 } from './round.ts';
import { eachEye, type Rule } from './rule.ts';

/** Horizontal prism imbalance that a finished pair may have, prism dioptres (ANSI Z80.1-2015, single vision). */
const TOLERANCE_PRISM = 0.67;

/** Prism that an error of 1 mm in the PD of one eye makes, against half of what the standard leaves for the pair. */
export const pdSensitivity: Rule = {
  id: 'pd-sensitivity',
  asks: 'lens',
  clearedBy: 'person',
  check: (situation) =>
    situation.use === 'none'
      ? []
      : eachEye(situation, ({ eye, ordered }) => {
          if (ordered === null) return null;
          // Prentice: 1 mm is 0.1 cm.
          const perMm = round2(Math.abs(meridianPowerD(ordered, 180)) / 10);
          return perMm >= TOLERANCE_PRISM / 2
            ? {
                message: 'per-mm',
                level: 'note',
                eye,
                figures: { perMmPrism: perMm, tolerancePrism: TOLERANCE_PRISM },
              }
            : null;
        }),
};

import { meridianPowerD } from '../optics/prescription.ts';
import { round2 } from './round.ts';
import { eachEye, type Rule, seesWithBoth } from './rule.ts';

/** Half of the horizontal prism that a weak pair may have, prism dioptres (ANSI Z80.1-2015: 0.67): a mm makes as much. */
const FROM_PRISM = 0.335;

/**
 * How far the PD of a strong pair may be out, mm (ANSI Z80.1-2015, horizontal over 2.75 D and, for a progressive,
 * 3.375 D): between both reference points, and for a progressive at each.
 */
export const PD_TOLERANCE = {
  pair: { message: 'pair', overD: 2.75, mm: 2.5 },
  each: { message: 'each', overD: 3.375, mm: 1 },
} as const;

/** Prism that an error of 1 mm in the PD of one eye makes, and what the standard allows at that strength. */
export const pdSensitivity: Rule = {
  id: 'pd-sensitivity',
  asks: 'lens',
  clearedBy: 'person',
  check: (situation) => {
    const { use, design } = situation;
    if (use === 'none') return [];
    // A tolerance of the pair holds for eyes that work together, one of each lens for every eye that sees.
    if (design.corridor === null && !seesWithBoth(situation)) return [];
    const { message, overD, mm } = design.corridor === null ? PD_TOLERANCE.pair : PD_TOLERANCE.each;
    return eachEye(situation, ({ eye, ordered, prescribed }) => {
      if (ordered === null || prescribed.balance) return null;
      const horizontalD = Math.abs(meridianPowerD(ordered, 180));
      // Prentice: 1 mm is 0.1 cm.
      const perMmPrism = round2(horizontalD / 10);
      if (perMmPrism < FROM_PRISM || horizontalD <= overD) return null;
      return { message, level: 'note', eye, figures: { perMmPrism, toleranceMm: mm } };
    });
  },
};

import { readingImbalance, SLAB_OFF_CONSIDERED_FROM } from '../optics/readingImbalance.ts';
import { round2 } from './round.ts';
import { type Rule, seesWithBoth, servesUse } from './rule.ts';
import type { Situation } from './situation.ts';

/** Reading level of single vision below the optical centre, mm: common practice. */
const SINGLE_VISION_DROP_MM = 10;

/**
 * Vertical prism of one eye against the other at the reading level, beyond what was prescribed (Prentice): a
 * prescribed prism is what the eyes need, there as in the distance.
 */
export const verticalImbalance: Rule = {
  id: 'vertical-imbalance',
  asks: 'lens',
  clearedBy: 'person',
  check(situation) {
    const { right, left, use, design } = situation;
    if (use === 'none' || !servesUse(situation) || !seesWithBoth(situation)) return [];
    if (right.ordered === null || left.ordered === null) return [];
    const dropMm = readingDropMm(situation);
    const { rightBaseUp } = readingImbalance(
      { power: right.ordered },
      { power: left.ordered },
      { dropMm, insetMm: right.nearInsetMm },
    );
    const prism = round2(Math.abs(rightBaseUp));
    if (prism < SLAB_OFF_CONSIDERED_FROM) return [];
    const multifocal = design.corridor !== null || design.segment !== null;
    return [
      {
        message: multifocal ? 'multifocal' : 'single-vision',
        level: multifocal ? 'caution' : 'note',
        eye: 'both',
        figures: { prism, dropMm, fromPrism: SLAB_OFF_CONSIDERED_FROM },
      },
    ];
  },
};

function readingDropMm({ design: { corridor, segment } }: Situation): number {
  if (corridor !== null) return round2(corridor.lengthMm - corridor.referenceBelowCrossMm);
  return segment === null ? SINGLE_VISION_DROP_MM : round2(segment.blankDropMm + segment.centreBelowTopMm);
}

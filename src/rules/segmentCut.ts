import { nasalSign } from '../optics/prismBase.ts';
import { segmentLeft } from '../optics/segment.ts';
import { tooLittleLeft } from './partLeft.ts';
import { eachEye, type Rule } from './rule.ts';

/** Share of the segment that should be left, below which the wearer is told: the shop's own caution. */
const LEAST_SHARE = 0.6;

/** How much of a segment lies inside the lens. */
export const segmentCut: Rule = {
  id: 'segment-cut',
  asks: 'lens',
  clearedBy: 'choice',
  check: (situation) =>
    eachEye(situation, ({ eye, reference, outline, nearInsetMm }) => {
      const { segment, name } = situation.design;
      if (segment === null || reference === null) return null;
      const top = {
        xMm: reference.xMm + nasalSign(eye) * nearInsetMm,
        yMm: reference.yMm - segment.blankDropMm,
      };
      const { share, topWidthMm } = segmentLeft(outline, segment, top);
      const left = { share, leastShare: LEAST_SHARE, widthMm: topWidthMm };
      return tooLittleLeft(eye, name, left, { some: 'cut', none: 'cut' });
    }),
};

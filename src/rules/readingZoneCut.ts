import { nasalSign } from '../optics/prismBase.ts';
import { readingZone } from '../optics/readingZone.ts';
import { tooLittleLeft } from './partLeft.ts';
import { eachEye, type Rule } from './rule.ts';

/** Zone that a reader uses below the corridor, mm: common practice, not a standard. */
export const READING_ZONE = { zoneWidthMm: 12, zoneHeightMm: 6 } as const;
/** Share of it that should be left, below which the wearer is told: the shop's own caution. */
const LEAST_SHARE = 0.75;

/** How much of the reading zone the rim leaves. */
export const readingZoneCut: Rule = {
  id: 'reading-zone-cut',
  asks: 'lens',
  clearedBy: 'choice',
  check: (situation) =>
    eachEye(situation, ({ eye, cross, outline, nearInsetMm }) => {
      const { corridor, name } = situation.design;
      if (corridor === null || cross === null) return null;
      const zone = readingZone({
        outline,
        cross,
        corridorMm: corridor.lengthMm,
        insetXMm: nasalSign(eye) * nearInsetMm,
        ...READING_ZONE,
      });
      const left = { share: zone.share, leastShare: LEAST_SHARE, widthMm: zone.widthMm };
      return tooLittleLeft(eye, name, left, { some: 'cut', none: 'gone' });
    }),
};

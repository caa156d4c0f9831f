import { round2 } from './round.ts';
import { eachEye, type Rule } from './rule.ts';

/** Depth of a bifocal's segment in the cut lens. */
export const segmentHeight: Rule = {
  id: 'segment-height',
  asks: 'lens',
  clearedBy: 'choice',
  check(situation) {
    const { segment, name } = situation.design;
    if (segment === null) return [];
    return eachEye(situation, ({ eye, segmentHeightMm: heightMm }) =>
      heightMm !== null && heightMm < segment.leastHeightMm
        ? {
            message: 'low',
            level: 'stop',
            eye,
            figures: {
              design: name,
              heightMm,
              leastMm: segment.leastHeightMm,
              shortMm: round2(segment.leastHeightMm - heightMm),
            },
          }
        : null,
    );
  },
};

import { eachEye, type Rule, servesUse } from './rule.ts';

/** Lenses with power are centred on the eyes: the PD, and the height where the design depends on it. */
export const measurementMissing: Rule = {
  id: 'measurement-missing',
  asks: 'lens',
  clearedBy: 'person',
  check(situation) {
    const { use, design } = situation;
    if (use === 'none') return [];
    if (situation.right.pdMm === null || situation.left.pdMm === null)
      return [{ message: 'pd', level: 'stop', eye: 'both', figures: { missing: 'pd' } }];
    if (!servesUse(situation)) return [];
    if (design.corridor !== null)
      return eachEye(situation, ({ eye, fittingHeightMm }) =>
        fittingHeightMm === null
          ? { message: 'fitting-height', level: 'stop', eye, figures: { missing: 'fittingHeight' } }
          : null,
      );
    if (design.segment !== null)
      return eachEye(situation, ({ eye, segmentHeightMm }) =>
        segmentHeightMm === null
          ? { message: 'segment-height', level: 'stop', eye, figures: { missing: 'segmentHeight' } }
          : null,
      );
    return [];
  },
};

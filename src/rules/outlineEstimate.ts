import { strongestMeridianD } from '../optics/prescription.ts';
import { round2 } from './round.ts';
import type { Rule } from './rule.ts';

/**
 * From this strength on an estimated outline does not carry a plain yes, D: high power by its usual definition. The
 * edge there changes by a third of a millimetre and more with each millimetre of outline.
 */
const STRONG_D = 6;

/** Figures from a fitted outline are estimates until the frame is traced. */
export const outlineEstimate: Rule = {
  id: 'outline-estimate',
  asks: 'lens',
  clearedBy: 'person',
  check({ frame, right, left }) {
    if (frame.outlineOrigin === 'traced' || right.lens === null || left.lens === null) return [];
    if (frame.mounting === 'drilled')
      return [{ message: 'drilled', level: 'caution', eye: 'both', figures: {} }];
    const strongestD = round2(
      Math.max(...[right, left].map(({ ordered }) => Math.abs(ordered ? strongestMeridianD(ordered) : 0))),
    );
    return strongestD >= STRONG_D
      ? [
          {
            message: 'strong',
            level: 'caution',
            eye: 'both',
            figures: { strongestAbsD: strongestD, fromAbsD: STRONG_D },
          },
        ]
      : [{ message: 'plain', level: 'note', eye: 'both', figures: {} }];
  },
};

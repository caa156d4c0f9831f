import { drivingFitness } from '../optics/tint.ts';
import { round2 } from './round.ts';
import type { Rule } from './rule.ts';

/** Category 4 is never for driving; under 75 % of light a tint is not for twilight or night. */
export const tintDriving: Rule = {
  id: 'tint-driving',
  check({ tint }) {
    if (tint === null || tint.kind === 'clear') return [];
    const darkest = Math.min(...tint.states.map(({ transmittance }) => transmittance));
    const lightest = Math.max(...tint.states.map(({ transmittance }) => transmittance));
    const day = drivingFitness({
      luminousTransmittance: darkest,
      ...(tint.spectrum === null ? {} : { spectrum: tint.spectrum }),
    });
    const figures = {
      tint: tint.name,
      darkestPercent: round2(darkest * 100),
      lightestPercent: round2(lightest * 100),
      category: day.category ?? 'none',
    };
    if (day.category === null) return [{ message: 'too-dark', level: 'stop', eye: 'both', figures }];
    if (!day.day) return [{ message: 'never', level: 'caution', eye: 'both', figures }];
    if (tint.kind === 'photochromic')
      return [{ message: 'photochromic', level: 'note', eye: 'both', figures }];
    return day.night ? [] : [{ message: 'not-at-night', level: 'note', eye: 'both', figures }];
  },
};

import { drivingFitness } from '../optics/tint.ts';
import { lensLightPercent } from './lensLight.ts';
import type { Rule } from './rule.ts';

/** Category 4 is never for driving; a lens that passes under 75 % of light is not for twilight or night. */
export const tintDriving: Rule = {
  id: 'tint-driving',
  asks: 'options',
  clearedBy: 'choice',
  check({ tint, material, coating }) {
    if (tint === null || tint.states.length === 0) return [];
    const percents = tint.states.map((state) => lensLightPercent(state, material, coating));
    const darkestPercent = Math.min(...percents);
    const lightestPercent = Math.max(...percents);
    const { category, day, night } = drivingFitness({
      luminousTransmittance: darkestPercent / 100,
      ...(tint.spectrum === null ? {} : { spectrum: tint.spectrum }),
    });
    const say = (message: string, level: 'stop' | 'caution' | 'note') => [
      {
        message,
        level,
        eye: 'both' as const,
        figures: { tint: tint.name, darkestPercent, lightestPercent, category: category ?? 'none' },
      },
    ];
    if (category === null) return say('too-dark', 'stop');
    if (!day) return say('never', 'caution');
    if (tint.kind === 'photochromic') return say('photochromic', 'note');
    return night ? [] : say('not-at-night', 'note');
  },
};

import { colourFringeAtGaze } from '../optics/chromatic.ts';
import { strongestMeridianD } from '../optics/prescription.ts';
import type { SpheroCylinder } from '../optics/types.ts';
import { round2 } from './round.ts';
import { eachEye, type Rule } from './rule.ts';

/** Gaze at which fringes are judged, degrees from straight ahead. */
const GAZE_DEG = 30;

/**
 * Colour fringes of a power at 30 degrees of gaze along its strongest meridian, prism dioptres to 0.01: prism over
 * Abbe number, paraxial (Prentice).
 */
export function fringesPrism(ordered: SpheroCylinder, abbe: number): number {
  const strongest = { sphereD: strongestMeridianD(ordered), cylinderD: 0, axisDeg: 180 };
  return round2(colourFringeAtGaze(strongest, abbe, { angleDeg: GAZE_DEG, directionDeg: 0 }));
}

/** Colour fringes at the side. */
export const colourFringes: Rule = {
  id: 'colour-fringes',
  asks: 'lens',
  clearedBy: 'choice',
  check: (situation) =>
    eachEye(situation, ({ eye, ordered }) => {
      if (ordered === null) return null;
      const { abbe } = situation.material;
      const fringes = fringesPrism(ordered, abbe);
      return fringes >= situation.habits.fringesFrom
        ? {
            message: 'seen',
            level: 'note',
            eye,
            figures: { fringesPrism: fringes, abbe, fromPrism: situation.habits.fringesFrom },
          }
        : null;
    }),
};

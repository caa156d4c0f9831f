import { strongestMeridianD } from '../optics/prescription.ts';
import { round2 } from './round.ts';
import { eachEye, type Rule } from './rule.ts';

/** Gaze at which fringes are judged: 30 degrees meets the lens about 16 mm from its centre, 27 mm from the eye's. */
const OFF_CENTRE_CM = 2.7 * Math.tan(Math.PI / 6);

/** Colour fringes at the side: prism over Abbe number. Paraxial (Prentice). */
export const colourFringes: Rule = {
  id: 'colour-fringes',
  asks: 'lens',
  check: (situation) =>
    eachEye(situation, ({ eye, ordered }) => {
      if (ordered === null) return null;
      const prism = Math.abs(strongestMeridianD(ordered)) * OFF_CENTRE_CM;
      const fringes = round2(prism / situation.material.abbe);
      return fringes >= situation.habits.fringesFrom
        ? {
            message: 'seen',
            level: 'note',
            eye,
            figures: {
              fringesPrism: fringes,
              abbe: situation.material.abbe,
              fromPrism: situation.habits.fringesFrom,
            },
          }
        : null;
    }),
};

/** Colour fringes: transverse chromatic aberration, the prism at the point looked through over the Abbe number. */
import { toRadians } from './angle.ts';
import { within } from './domain.ts';
import { addPrisms, NO_PRISM, prenticePrism, prismAmount } from './prism.ts';
import { CENTRE_OF_ROTATION_MM, type Gaze } from './sharpView.ts';
import type { PointMm, PrismVector, SpheroCylinder } from './types.ts';

/** Fringe from which wearers notice it, prism dioptres (Jalie, from memory). */
export const FRINGE_NOTICED_FROM = 0.1;

/**
 * Transverse chromatic aberration in prism dioptres (0 or more) of a prism seen through. Throws a RangeError for an
 * Abbe number of 0 or less.
 */
export function colourFringe(prism: PrismVector, abbe: number): number {
  return prismAmount(prism) / within('Abbe number', abbe, 1, Infinity, '');
}

/**
 * Where a gaze crosses the plane of the back vertex, mm from it in the front view: 27 tan(angle) towards the gaze.
 * Throws a RangeError beyond 60 degrees.
 */
export function gazePoint({ angleDeg, directionDeg }: Gaze): PointMm {
  const mm = CENTRE_OF_ROTATION_MM * Math.tan(toRadians(within('gaze', angleDeg, 0, 60, 'degrees')));
  return { xMm: mm * Math.cos(toRadians(directionDeg)), yMm: mm * Math.sin(toRadians(directionDeg)) };
}

/**
 * Transverse chromatic aberration (prism dioptres) at a gaze through a thin lens whose optical centre stands straight
 * ahead, ordered prism included.
 */
export function colourFringeAtGaze(
  power: SpheroCylinder,
  abbe: number,
  gaze: Gaze,
  ordered: PrismVector = NO_PRISM,
): number {
  return colourFringe(addPrisms(ordered, prenticePrism(power, gazePoint(gaze))), abbe);
}

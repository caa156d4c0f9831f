/**
 * Power of a lens seen through a tilt, exactly for a thin lens, and the power to order so that the wearer gets what
 * was prescribed.
 *
 * With P the projection of the lens's own x, y on the plane across the line of sight, worn = k P^-T F P^-1, where
 * k = (n cos i' - cos i)/(n - 1). For a sphere this is Coddington's pair: F k and F k / cos² i. It keeps the turn of
 * an oblique axis and holds for pantoscopic tilt and face form together. Undoing it is exact.
 *
 * Thickness is left out, as in every published form, so that an order does not wait for the thickness it leads to. By
 * exact rays a real lens of index 1.5 or more gives less plus by at most 3.3 tan² i F1² t/n (mean power, and as much
 * cylinder): 0.01 D for -4.00 at 20 degrees, 0.04 D for +4.00 and 0.06 D for +6.00 at 15. Half of the tightest
 * tolerance (0.12 D) is passed by +6.00 from 15 degrees and by +4.00 from 19.
 */
import { within } from './domain.ts';
import { type LensPosition, lensAxes } from './lensPosition.ts';
import { fromPowerMatrix, type PowerMatrix, toPowerMatrix } from './powerMatrix.ts';
import { NO_PRISM } from './prism.ts';
import type { PrismVector, SpheroCylinder } from './types.ts';

/** What a lens gives: power (D) and prism at the reference point (prism dioptres, towards the base). */
export interface LensEffect {
  readonly power: SpheroCylinder;
  readonly prism: PrismVector;
}

/** The tilt as a linear map of the front view (u = P x, with P lower triangular) and its gain k. */
interface TiltMap {
  readonly xx: number;
  readonly yx: number;
  readonly yy: number;
  readonly gain: number;
}

/**
 * What a lens of the ordered effect gives in its position of wear: power in minus-cylinder form, D, and prism.
 * `wrapPrism` is what the tilt itself adds (see wrapPrism.ts; none for a thin lens). Throws a RangeError for an
 * index of 1 or less or a tilt beyond 45 degrees.
 */
export function wornAs(
  ordered: LensEffect,
  position: LensPosition,
  index: number,
  wrapPrism: PrismVector = NO_PRISM,
): LensEffect {
  const map = tiltMap(position, index);
  const inverse = { xx: 1 / map.xx, yx: -map.yx / (map.xx * map.yy), yy: 1 / map.yy };
  const prism = transposedTimes(inverse, ordered.prism);
  return {
    power: fromPowerMatrix(scaled(congruent(inverse, toPowerMatrix(ordered.power)), map.gain)),
    prism: { x: map.gain * prism.x + wrapPrism.x, y: map.gain * prism.y + wrapPrism.y },
  };
}

/**
 * What to order so that the lens gives the prescribed effect in its position of wear: the inverse of `wornAs`. The
 * wrap prism is taken off.
 */
export function orderFor(
  prescribed: LensEffect,
  position: LensPosition,
  index: number,
  wrapPrism: PrismVector = NO_PRISM,
): LensEffect {
  const map = tiltMap(position, index);
  const wanted = { x: prescribed.prism.x - wrapPrism.x, y: prescribed.prism.y - wrapPrism.y };
  const prism = transposedTimes(map, wanted);
  return {
    power: fromPowerMatrix(scaled(congruent(map, toPowerMatrix(prescribed.power)), 1 / map.gain)),
    prism: { x: prism.x / map.gain, y: prism.y / map.gain },
  };
}

function tiltMap(position: LensPosition, index: number): TiltMap {
  within('refractive index', index, 1.0001, 5, '');
  const axes = lensAxes(position);
  const cosIn = axes.z[2];
  const cosOut = Math.sqrt(1 - (1 - cosIn * cosIn) / (index * index));
  return { xx: axes.x[0], yx: axes.x[1], yy: axes.y[1], gain: (index * cosOut - cosIn) / (index - 1) };
}

const scaled = (f: PowerMatrix, k: number): PowerMatrix => ({ xx: k * f.xx, xy: k * f.xy, yy: k * f.yy });

type Lower = Omit<TiltMap, 'gain'>;

/** L^T F L for a lower triangular L. */
const congruent = (l: Lower, f: PowerMatrix): PowerMatrix => ({
  xx: l.xx * l.xx * f.xx + 2 * l.xx * l.yx * f.xy + l.yx * l.yx * f.yy,
  xy: l.xx * l.yy * f.xy + l.yx * l.yy * f.yy,
  yy: l.yy * l.yy * f.yy,
});

/** L^T v for a lower triangular L. */
const transposedTimes = (l: Lower, v: PrismVector): PrismVector => ({
  x: l.xx * v.x + l.yx * v.y,
  y: l.yy * v.y,
});

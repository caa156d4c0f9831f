/**
 * Prism of a decentred sphero-cylinder (Prentice's rule as a vector) and the way back.
 *
 * Prism is a vector towards its base in the front view, in prism dioptres. With the power matrix F and the point r
 * in centimetres from the optical centre the base vector is -(F r): the torsional term of an oblique cylinder is
 * kept, which meridian powers alone would lose.
 */
import { toRadians } from './angle.ts';
import { toPowerMatrix } from './powerMatrix.ts';
import { failure, type Result, success } from './result.ts';
import type { PointMm, PrismVector, SpheroCylinder } from './types.ts';

/** No prism at all. */
export const NO_PRISM: PrismVector = { x: 0, y: 0 };

/** Why no decentration gives the wanted prism: no power along this direction. */
export interface NoPowerForPrism {
  readonly code: 'no-power-for-prism';
  /** Direction (TABO degrees) along which the lens has no power but prism is wanted. */
  readonly meridianDeg: number;
  /** Prism wanted along that direction, prism dioptres. */
  readonly wantedPrism: number;
}

/**
 * Prism in prism dioptres, as a vector towards the base, at a point that lies `offsetFromCentre` (mm, front view)
 * from the optical centre of a thin lens.
 */
export function prenticePrism(power: SpheroCylinder, offsetFromCentre: PointMm): PrismVector {
  const f = toPowerMatrix(power);
  const xCm = offsetFromCentre.xMm / 10;
  const yCm = offsetFromCentre.yMm / 10;
  return { x: 0 - (f.xx * xCm + f.xy * yCm), y: 0 - (f.xy * xCm + f.yy * yCm) };
}

/**
 * Prism at the pupil (prism dioptres) when the optical centre stands `centreFromPupil` mm (front view) away from
 * it: the effect of a PD or height error.
 */
export const prismOfMisplacedCentre = (power: SpheroCylinder, centreFromPupil: PointMm): PrismVector =>
  prenticePrism(power, { xMm: -centreFromPupil.xMm, yMm: -centreFromPupil.yMm });

/**
 * Where to move the optical centre (mm, front view, from the pupil) so that the wanted prism stands at the pupil;
 * the shortest such move. The inverse of `prismOfMisplacedCentre`. A fault where a meridian that would have to give
 * prism has no power (under 1e-9 D).
 */
export function decentrationForPrism(
  power: SpheroCylinder,
  wanted: PrismVector,
): Result<PointMm, NoPowerForPrism> {
  let xMm = 0;
  let yMm = 0;
  const principal = [
    { meridianDeg: power.axisDeg, powerD: power.sphereD },
    { meridianDeg: power.axisDeg + 90, powerD: power.sphereD + power.cylinderD },
  ];
  for (const { meridianDeg, powerD } of principal) {
    const ux = Math.cos(toRadians(meridianDeg));
    const uy = Math.sin(toRadians(meridianDeg));
    const along = wanted.x * ux + wanted.y * uy;
    if (Math.abs(along) < 1e-9) continue;
    if (Math.abs(powerD) < 1e-9) {
      return failure({
        code: 'no-power-for-prism',
        meridianDeg: meridianDeg % 180 || 180,
        wantedPrism: Math.abs(along),
      });
    }
    xMm += (10 * along * ux) / powerD;
    yMm += (10 * along * uy) / powerD;
  }
  return success({ xMm, yMm });
}

/** Sum of prisms on one eye: the resultant (compound) prism, prism dioptres. */
export function addPrisms(...prisms: readonly PrismVector[]): PrismVector {
  let x = 0;
  let y = 0;
  for (const prism of prisms) {
    x += prism.x;
    y += prism.y;
  }
  return { x, y };
}

/** Size of a prism, prism dioptres, 0 or more. */
export const prismAmount = (prism: PrismVector): number => Math.hypot(prism.x, prism.y);

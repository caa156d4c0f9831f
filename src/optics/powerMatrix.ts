/**
 * Power as a symmetric 2 x 2 matrix in the front view (x to the viewer's right, y up).
 *
 * The matrix adds, transforms and gives prism without loss; the sphere-cylinder-axis form does none of these.
 * Source: Fick's and Long's dioptric power matrix (Long, Am J Optom Physiol Opt 1976; from memory).
 */
import { toRadians } from './angle.ts';
import { fromPowerVector } from './prescription.ts';
import type { SpheroCylinder } from './types.ts';

/** Dioptric power matrix, D. */
export interface PowerMatrix {
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
}

/** The power matrix (D) of a sphero-cylinder: xx = S + C sin²a, yy = S + C cos²a, xy = -C sin a cos a. */
export function toPowerMatrix(power: SpheroCylinder): PowerMatrix {
  const a = toRadians(power.axisDeg);
  const { sphereD: s, cylinderD: c } = power;
  return { xx: s + c * Math.sin(a) ** 2, xy: -c * Math.sin(a) * Math.cos(a), yy: s + c * Math.cos(a) ** 2 };
}

/** The sphero-cylinder (minus cylinder, axis above 0 to 180) of a power matrix. */
export const fromPowerMatrix = ({ xx, xy, yy }: PowerMatrix): SpheroCylinder =>
  fromPowerVector({ meanD: (xx + yy) / 2, j0D: (xx - yy) / 2, j45D: xy });

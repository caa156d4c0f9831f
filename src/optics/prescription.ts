/**
 * The algebra of one sphero-cylindrical power: forms, meridians, power vectors.
 *
 * Axes are TABO degrees above 0 to 180; an axis of 0 is written 180, and a power without cylinder has axis 180.
 */
import { taboAxisDeg, toDegrees, toRadians } from './angle.ts';
import type { SpheroCylinder } from './types.ts';

/** Power vector of Thibos, Wheeler and Horner (1997), D. */
export interface PowerVector {
  /** Spherical equivalent. */
  readonly meanD: number;
  /** Jackson cross cylinder at axis 180/90: -(C/2) cos 2a. */
  readonly j0D: number;
  /** Jackson cross cylinder at axis 45/135: -(C/2) sin 2a. */
  readonly j45D: number;
}

/** The same power with its axis as written: above 0 to 180, and 180 where there is no cylinder. No negative zero. */
export function normalised(power: SpheroCylinder): SpheroCylinder {
  const { sphereD, cylinderD, axisDeg } = power;
  if (cylinderD === 0) return { sphereD: sphereD + 0, cylinderD: 0, axisDeg: 180 };
  return { sphereD: sphereD + 0, cylinderD, axisDeg: taboAxisDeg(axisDeg) };
}

/** The same power written with the other sign of cylinder: S + C, -C, axis turned by 90 degrees. */
export function transpose(power: SpheroCylinder): SpheroCylinder {
  const { sphereD, cylinderD, axisDeg } = power;
  return normalised({ sphereD: sphereD + cylinderD, cylinderD: -cylinderD, axisDeg: axisDeg + 90 });
}

/** The same power with a minus cylinder (or none). */
export const toMinusCylinder = (power: SpheroCylinder): SpheroCylinder =>
  power.cylinderD > 0 ? transpose(power) : normalised(power);

/** The same power with a plus cylinder (or none). */
export const toPlusCylinder = (power: SpheroCylinder): SpheroCylinder =>
  power.cylinderD < 0 ? transpose(power) : normalised(power);

/**
 * Curvature power along a meridian (TABO degrees), D: S + C sin²(m - a). Never use it for prism: it lacks the
 * torsional term, which the power matrix holds.
 */
export const meridianPowerD = (power: SpheroCylinder, meridianDeg: number): number =>
  power.sphereD + power.cylinderD * Math.sin(toRadians(meridianDeg - power.axisDeg)) ** 2;

/** Spherical equivalent S + C/2, D. */
export const sphericalEquivalentD = (power: SpheroCylinder): number => power.sphereD + power.cylinderD / 2;

/**
 * Signed power of the principal meridian of largest absolute power, D; of two as large, the one along the axis
 * as written in minus-cylinder form.
 */
export function strongestMeridianD(power: SpheroCylinder): number {
  const { sphereD, cylinderD } = toMinusCylinder(power);
  const across = sphereD + cylinderD;
  return Math.abs(across) > Math.abs(sphereD) ? across : sphereD;
}

/** Power vector (D) of a sphero-cylinder. */
export function toPowerVector(power: SpheroCylinder): PowerVector {
  const twice = toRadians(2 * power.axisDeg);
  const half = power.cylinderD / 2;
  return {
    meanD: sphericalEquivalentD(power),
    j0D: -half * Math.cos(twice) + 0,
    j45D: -half * Math.sin(twice) + 0,
  };
}

/** Sphero-cylinder (minus cylinder) of a power vector; a cylinder under 1e-9 D is rounding and gives a sphere. */
export function fromPowerVector({ meanD, j0D, j45D }: PowerVector): SpheroCylinder {
  const half = Math.hypot(j0D, j45D);
  if (half < 5e-10) return { sphereD: meanD, cylinderD: 0, axisDeg: 180 };
  return {
    sphereD: meanD + half,
    cylinderD: -2 * half,
    axisDeg: taboAxisDeg(toDegrees(Math.atan2(j45D, j0D)) / 2),
  };
}

/**
 * Sum of powers in contact, obliquely crossed cylinders included, in minus-cylinder form, D. Each power vector
 * component adds (Thibos, Wheeler and Horner 1997). No powers at all give plano.
 */
export function addPowers(...powers: readonly SpheroCylinder[]): SpheroCylinder {
  const sum = { meanD: 0, j0D: 0, j45D: 0 };
  for (const power of powers) {
    const vector = toPowerVector(power);
    sum.meanD += vector.meanD;
    sum.j0D += vector.j0D;
    sum.j45D += vector.j45D;
  }
  return fromPowerVector(sum);
}

/**
 * Martin's approximation for a tilted lens: S' = S (1 + sin² q / 2n), with an induced cylinder S' tan² q on the axis
 * of the tilt (Durham Technical Community College, Opticianry 142). Beyond about 10 degrees the exact form governs
 * (tilt.ts): at +10.00 and 15 degrees the sphere is 0.008 D off, the cylinder 0.001 D.
 */
import { toRadians } from './angle.ts';
import { within } from './domain.ts';
import { addPowers } from './prescription.ts';
import type { SpheroCylinder } from './types.ts';

/** Axis about which the lens is tilted: 180 for pantoscopic tilt, 90 for face form. */
export type TiltAxisDeg = 90 | 180;

/**
 * Power (D) worn through a tilt of `tiltDeg` by Martin's formula, as published for the sphere; the induced cylinder
 * is crossed with the lens's own, which is left as it is. Throws a RangeError beyond 45 degrees.
 */
export function martinWorn(
  power: SpheroCylinder,
  tiltDeg: number,
  tiltAxisDeg: TiltAxisDeg,
  index: number,
): SpheroCylinder {
  within('tilt', tiltDeg, -45, 45, 'degrees');
  within('refractive index', index, 1.0001, 5, '');
  const sphereD = power.sphereD * (1 + Math.sin(toRadians(tiltDeg)) ** 2 / (2 * index));
  const induced = {
    sphereD: 0,
    cylinderD: sphereD * Math.tan(toRadians(tiltDeg)) ** 2,
    axisDeg: tiltAxisDeg,
  };
  return addPowers({ ...power, sphereD }, induced);
}

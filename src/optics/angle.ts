/** Angles: degrees at every public surface, radians inside a formula. */

/** Degrees to radians. */
export const toRadians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Radians to degrees. */
export const toDegrees = (radians: number): number => (radians * 180) / Math.PI;

/**
 * Any angle in degrees as a TABO axis: above 0 to 180, 0 written 180. A remainder below 1e-9 degrees is rounding
 * and also gives 180.
 */
export function taboAxisDeg(degrees: number): number {
  const axis = ((degrees % 180) + 180) % 180;
  return axis < 1e-9 ? 180 : axis;
}

/** Any angle in degrees as a direction from 0 to below 360 (360-degree notation of prism bases). */
export function fullTurnDeg(degrees: number): number {
  const turn = ((degrees % 360) + 360) % 360;
  return turn > 360 - 1e-9 ? 0 : turn;
}

/** Direction of a point from the origin (any one unit of length), degrees counter-clockwise from +x, 0 to below 360. */
export const directionDeg = (x: number, y: number): number => fullTurnDeg(toDegrees(Math.atan2(y, x)));

/** Distance between two axes in degrees, 0 to 90: axes 5 and 178 are 7 apart. */
export function axisDistanceDeg(aDeg: number, bDeg: number): number {
  const apart = Math.abs(taboAxisDeg(aDeg) - taboAxisDeg(bDeg));
  return Math.min(apart, 180 - apart);
}

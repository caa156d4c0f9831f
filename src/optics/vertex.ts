/**
 * Power at another vertex distance: F' = F / (1 - d F), each principal meridian by itself.
 *
 * Exact for paraxial light of a distant object.
 */
import { within } from './domain.ts';
import { normalised } from './prescription.ts';
import type { SpheroCylinder } from './types.ts';

/**
 * Power (D) that a lens must have after it is moved by `towardsEyeMm` (positive towards the eye) to act at the eye
 * as before. Throws a RangeError where the move reaches or passes the focus of the lens.
 */
export function powerMovedD(powerD: number, towardsEyeMm: number): number {
  within('power', powerD, -Infinity, Infinity, 'D');
  within('move towards the eye', towardsEyeMm, -Infinity, Infinity, 'mm');
  const share = 1 - (towardsEyeMm / 1000) * powerD;
  if (share <= 0) {
    throw new RangeError(
      `A lens of ${powerD} D has its focus ${Math.abs(1000 / powerD).toFixed(1)} mm away: ` +
        `a move of ${towardsEyeMm} mm reaches it, expected a shorter move.`,
    );
  }
  return powerD / share;
}

/** The same for a sphero-cylinder: both principal meridians moved, sign form of the cylinder and axis kept. D, mm. */
export function moveLens(power: SpheroCylinder, towardsEyeMm: number): SpheroCylinder {
  const sphereD = powerMovedD(power.sphereD, towardsEyeMm);
  const acrossD = powerMovedD(power.sphereD + power.cylinderD, towardsEyeMm);
  return normalised({ sphereD, cylinderD: acrossD - sphereD, axisDeg: power.axisDeg });
}

/**
 * Power (D) to wear at `wornMm` that acts as `power` did at the tested vertex distance `testedMm` (both from the
 * back vertex to the cornea).
 */
export const atWornVertex = (power: SpheroCylinder, testedMm: number, wornMm: number): SpheroCylinder =>
  moveLens(power, testedMm - wornMm);

/** Power (D) at the cornea of a lens worn at `vertexMm`: what a contact lens would have to give. */
export const atCornea = (power: SpheroCylinder, vertexMm: number): SpheroCylinder =>
  moveLens(power, vertexMm);

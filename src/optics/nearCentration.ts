/**
 * Near centration by the geometry of convergence: the lens stands between the object and the centre of rotation of
 * the eye, and its own power shifts the line of sight (Jalie's form). Lengths in mm, powers in D.
 */

/** Where the near object is seen. */
export interface NearSight {
  /** Working distance from the lens. */
  readonly workingMm: number;
  /** From the lens to the eye's centre of rotation; 27 is usual. */
  readonly rotationMm: number;
  /** Horizontal power of the lens for distance. */
  readonly powerD: number;
}

/** Near centration distance, mm, of a centration distance (of one eye or of both): NCD = CD - CD/(1 + W(1/s - F/1000)). */
export function nearCentrationMm(centrationMm: number, sight: NearSight): number {
  return centrationMm - insetOf(centrationMm, sight);
}

/** Inset of one eye, mm, from the centration distance of both eyes: (CD - NCD)/2. */
export function nearInsetMm(binocularCentrationMm: number, sight: NearSight): number {
  return insetOf(binocularCentrationMm, sight) / 2;
}

function insetOf(centrationMm: number, { workingMm, rotationMm, powerD }: NearSight): number {
  return centrationMm / (1 + workingMm * (1 / rotationMm - powerD / 1000));
}

/**
 * The words that every file of `optics` shares: small readonly records of numbers.
 *
 * Frame of reference (all of `optics`): millimetres, front view (the viewer faces the wearer), origin at the
 * boxed centre, x to the viewer's right, y up, z from the front of the lens towards the eye. The right lens has
 * its nasal side at +x; the left is its mirror image. Axes are TABO degrees. Powers are back vertex powers in D.
 */

/** Which eye of the wearer. */
export type Eye = 'right' | 'left';

/** A point or a vector in the front view, mm. */
export interface PointMm {
  readonly xMm: number;
  readonly yMm: number;
}

/** A sphero-cylindrical power. */
export interface SpheroCylinder {
  /** D. */
  readonly sphereD: number;
  /** D, either sign; 0 for a sphere. */
  readonly cylinderD: number;
  /** TABO degrees, above 0 to 180; 180 where the cylinder is 0. */
  readonly axisDeg: number;
}

/** Prism as a vector towards its base in the front view, in prism dioptres (cm per metre). */
export interface PrismVector {
  /** Towards the viewer's right: right eye base in, left eye base out. */
  readonly x: number;
  /** Base up. */
  readonly y: number;
}

/**
 * The cut shape of a lens, seen from the front, to the bevel apex (or groove bottom): radii at equal angles from
 * the boxed centre, counter-clockwise, the first at 0 degrees (+x). Length is at least 36; 360 is usual.
 */
export interface Outline {
  readonly radiiMm: readonly number[];
}

/** A front surface of revolution about the normal at the reference point. */
export interface FrontSurface {
  /** Vertex radius, positive when convex (centre on the eye's side); Infinity when flat. mm. */
  readonly radiusMm: number;
  /** Conic constant k: 0 sphere, below 0 flattening outwards (-1 parabola). */
  readonly conic: number;
}

/**
 * A back surface: a tyre toroid. The arc of `generatingRadiusMm` (the steeper meridian) is revolved about an axis
 * at the distance of the other meridian's radius, then the whole is tilted about the back vertex for prism.
 * Radii are positive when the centre lies on the eye's side (a hollow back), negative when bulging to the eye,
 * Infinity when flat.
 */
export interface BackSurface {
  readonly generatingRadiusMm: number;
  readonly revolvedRadiusMm: number;
  /** Direction of the generating arc in the front view, degrees counter-clockwise from +x, 0 to below 180. */
  readonly generatingMeridianDeg: number;
  /** Slope of the tilt plane, dz/dx and dz/dy, dimensionless: the plane z = slopeX x + slopeY y. */
  readonly tiltSlopeX: number;
  readonly tiltSlopeY: number;
}

/**
 * Sharp-view angle of a single-vision lens: how far the eye can turn before the lens blurs.
 *
 * For each gaze from the eye's centre of rotation the ray is traced exactly back through both surfaces, and the power
 * the lens gives a distant object along it is taken on the vertex sphere (the sphere about the centre of rotation
 * through the back vertex), in the eye's own axes (turned without roll). Less the power intended, that leaves an error
 * with a mean m and an astigmatism a: blur = hypot(m, a/2), no accommodation.
 *
 * One row in full: n 1.5, front +6.00 D (r 83.333), 2 mm thick, -4.00 D (back r 49.759), gaze 30 degrees, no tilt.
 *  1. The ray back from (0, 27) meets the back at height 14.3652, z 2.1187; the normal leans 16.780 degrees, so it
 *     stands 13.220 degrees off it in air and 8.770 inside: 25.549 off the lens's axis.
 *  2. It meets the front at height 15.6274, z -0.5216, 2.9265 mm earlier; the normal leans 10.809, so it stands 14.741
 *     off it inside and 22.437 in air: the light came in at 33.246 off the axis.
 *  3. Front, gain 1.5 cos 14.741 - cos 22.437 = 0.526332: sagittal gain/r = 6.3160 D, tangential, by cos² 14.741,
 *     6.7532 D. Carried 2.9265 mm in the material: 6.3948 and 6.8434 D.
 *  4. Back, gain cos 13.220 - 1.5 cos 8.770 = -0.508965: sagittal 6.3948 + gain/r = -3.8338 D, tangential
 *     (6.8434 cos² 8.770 + gain/r) / cos² 13.220 = -3.7399 D.
 *  5. Carried the 1.7305 mm on to the vertex sphere: -3.8085 and -3.7158 D. Mean error +0.2378, astigmatism 0.0927,
 *     blur 0.2423 D: still sharp. It passes 0.25 D at 30.39 degrees.
 */
import { toRadians } from './angle.ts';
import { within } from './domain.ts';
import type { LensPosition } from './lensPosition.ts';
import { type PlacedLens, placeLens, powerAlongRay, type TracedLens, traceToEye } from './lensTrace.ts';
import { type PowerMatrix, toPowerMatrix } from './powerMatrix.ts';
import type { SpheroCylinder } from './types.ts';
import { along, dot, type Vec3 } from './vector3.ts';

/** From the back vertex to the eye's centre of rotation, mm (the usual convention). */
export const CENTRE_OF_ROTATION_MM = 27;
/** Blur at which the view counts as no longer sharp, D. */
export const SHARP_BLUR_D = 0.25;
/** Largest gaze asked, degrees. */
export const LARGEST_GAZE_DEG = 35;

/** A gaze: how far from straight ahead, and towards where in the front view (degrees counter-clockwise from +x). */
export interface Gaze {
  readonly angleDeg: number;
  readonly directionDeg: number;
}

/** Errors along one gaze, D. */
export interface GazeBlur {
  /** Mean power given less mean power intended. */
  readonly meanErrorD: number;
  /** Size of the difference cylinder, 0 or more. */
  readonly astigmatismD: number;
  /** hypot(mean error, astigmatism / 2). */
  readonly blurD: number;
}

/** How far the view is sharp towards one direction. */
export interface SharpView {
  readonly directionDeg: number;
  /** 0 to 35 degrees. */
  readonly angleDeg: number;
  /** What ends it: the blur, the largest gaze asked, or the end of the surfaces (no ray passes). */
  readonly endedBy: 'blur' | 'largest gaze' | 'no ray';
}

/** A lens before an eye: what sharp view is asked of. */
export interface SightLine {
  readonly lens: TracedLens;
  readonly position: LensPosition;
  /** The power the wearer is meant to have, straight ahead, at the back vertex. */
  readonly intended: SpheroCylinder;
}

/** Blur along a gaze; null where no ray passes the lens. Throws a RangeError for a gaze beyond 60 degrees. */
export const gazeBlur = (sight: SightLine, gaze: Gaze): GazeBlur | null =>
  blurOf(placeLens(sight.lens, sight.position), toPowerMatrix(sight.intended), gaze);

/** Power matrix (D) on the vertex sphere along a gaze, in the eye's own axes; null where no ray passes. */
export function gazePower(lens: PlacedLens, gaze: Gaze): PowerMatrix | null {
  const angle = toRadians(within('gaze', gaze.angleDeg, 0, 60, 'degrees'));
  const towards = toRadians(gaze.directionDeg);
  const sine = Math.sin(angle);
  const toEye: Vec3 = [-sine * Math.cos(towards), -sine * Math.sin(towards), Math.cos(angle)];
  const centre: Vec3 = [0, 0, CENTRE_OF_ROTATION_MM];
  const ray = traceToEye(lens, centre, toEye);
  if (ray === null) return null;
  const toCentreMm = dot(along(centre, -1, ray.atBack.point), toEye);
  return powerAlongRay(lens, ray, toCentreMm - CENTRE_OF_ROTATION_MM);
}

/** Sharp-view angles towards `directions` equally spaced directions, the first at +x (8 as a rule). */
export function sharpView(sight: SightLine, directions = 8): readonly SharpView[] {
  const lens = placeLens(sight.lens, sight.position);
  const intended = toPowerMatrix(sight.intended);
  return Array.from({ length: directions }, (_, i) => sharpTowards(lens, intended, (360 * i) / directions));
}

const STEP_DEG = 1;

/** Walks outwards in whole degrees to the first gaze that is not sharp, then halves the step to 0.001 degrees. */
function sharpTowards(lens: PlacedLens, intended: PowerMatrix, directionDeg: number): SharpView {
  const at = (angleDeg: number) => blurOf(lens, intended, { angleDeg, directionDeg });
  const sharp = (blur: GazeBlur | null) => blur !== null && blur.blurD <= SHARP_BLUR_D;
  let far = 0;
  while (far <= LARGEST_GAZE_DEG && sharp(at(far))) far += STEP_DEG;
  if (far > LARGEST_GAZE_DEG) return { directionDeg, angleDeg: LARGEST_GAZE_DEG, endedBy: 'largest gaze' };
  let near = Math.max(0, far - STEP_DEG);
  while (far - near > 0.001) {
    const middle = (near + far) / 2;
    if (sharp(at(middle))) near = middle;
    else far = middle;
  }
  return { directionDeg, angleDeg: near, endedBy: at(far) === null ? 'no ray' : 'blur' };
}

function blurOf(lens: PlacedLens, intended: PowerMatrix, gaze: Gaze): GazeBlur | null {
  const given = gazePower(lens, gaze);
  if (given === null) return null;
  const xx = given.xx - intended.xx;
  const yy = given.yy - intended.yy;
  const meanErrorD = (xx + yy) / 2;
  const astigmatismD = 2 * Math.hypot((xx - yy) / 2, given.xy - intended.xy);
  return { meanErrorD, astigmatismD, blurD: Math.hypot(meanErrorD, astigmatismD / 2) };
}

/**
 * Rays through a finished single-vision lens in its position of wear, traced back from the eye.
 *
 * Wearer's frame: back vertex at the origin, line of sight straight ahead along z. The lens is turned about its
 * back vertex; distance object, so that the light before the lens is a parallel bundle.
 */
import { type LensPosition, lensAxes } from './lensPosition.ts';
import type { PowerMatrix } from './powerMatrix.ts';
import {
  meet,
  normalAt,
  type PlacedSurface,
  type RayHit,
  refract,
  refractWavefront,
  travel,
} from './skewRay.ts';
import { backShape, frontShape } from './surfaceJet.ts';
import type { BackSurface, FrontSurface } from './types.ts';
import { type Axes, along, dot, fromAxes, leastTurn, unit, type Vec3 } from './vector3.ts';

/** A single-vision lens by its surfaces. */
export interface TracedLens {
  readonly front: FrontSurface;
  readonly back: BackSurface;
  /** Along the normal of the front at the reference point. mm. */
  readonly centreThicknessMm: number;
  /** At the wavelength asked for. */
  readonly index: number;
}

/** Both surfaces in the wearer's frame, ready to trace. */
export interface PlacedLens {
  readonly front: PlacedSurface;
  readonly back: PlacedSurface;
  readonly index: number;
}

/** A ray that reaches the eye: directions of the light, unit vectors, and where it crosses the surfaces, mm. */
export interface LensRay {
  readonly beforeLens: Vec3;
  readonly inLens: Vec3;
  readonly toEye: Vec3;
  readonly atFront: RayHit;
  readonly atBack: RayHit;
}

/** The lens set in its position of wear. */
export function placeLens(lens: TracedLens, position: LensPosition): PlacedLens {
  const axes = lensAxes(position);
  const { tiltSlopeX, tiltSlopeY } = lens.back;
  const tilt = leastTurn(unit([-tiltSlopeX, -tiltSlopeY, 1]));
  return {
    front: { shape: frontShape(lens.front), vertex: along([0, 0, 0], -lens.centreThicknessMm, axes.z), axes },
    back: { shape: backShape(lens.back), vertex: [0, 0, 0], axes: turned(axes, tilt) },
    index: lens.index,
  };
}

const turned = (axes: Axes, by: Axes): Axes => ({
  x: fromAxes(axes, by.x),
  y: fromAxes(axes, by.y),
  z: fromAxes(axes, by.z),
});

/**
 * The ray that passes through the point `through` (mm, on the eye's side) and leaves the lens along `toEye` (unit
 * vector). Null where it misses a surface or is totally reflected.
 */
export function traceToEye(lens: PlacedLens, through: Vec3, toEye: Vec3): LensRay | null {
  const atBack = meet(lens.back, through, toEye);
  if (atBack === null) return null;
  const inLens = refract(toEye, normalAt(lens.back, atBack), 1, lens.index);
  if (inLens === null) return null;
  const atFront = meet(lens.front, atBack.point, inLens);
  if (atFront === null) return null;
  const beforeLens = refract(inLens, normalAt(lens.front, atFront), lens.index, 1);
  return beforeLens === null ? null : { beforeLens, inLens, toEye, atFront, atBack };
}

/**
 * Power matrix (D) that the lens gives a distant object along a ray, measured `beyondBackMm` behind the back surface
 * along the ray, in the eye's own x and y (turned with the ray without roll).
 */
export function powerAlongRay(lens: PlacedLens, ray: LensRay, beyondBackMm: number): PowerMatrix {
  const inside = leastTurn(ray.inLens);
  const eye = leastTurn(ray.toEye);
  const { index } = lens;
  const first = refractWavefront(
    null,
    { surface: lens.front, hit: ray.atFront, before: ray.beforeLens, after: ray.inLens, n: 1, m: index },
    { a: inside.x, b: inside.y },
  );
  const thickness = dot(along(ray.atBack.point, -1, ray.atFront.point), ray.inLens);
  const last = refractWavefront(
    travel(first, thickness),
    { surface: lens.back, hit: ray.atBack, before: ray.inLens, after: ray.toEye, n: index, m: 1 },
    { a: eye.x, b: eye.y },
  );
  const { aa, ab, bb } = travel(last, beyondBackMm);
  return { xx: -1000 * aa, xy: -1000 * ab, yy: -1000 * bb };
}

/**
 * Prism that a lens gains from being tilted or wrapped, by an exact ray.
 *
 * The ray leaves the lens along the straight line of sight, through the back vertex; its bend is the prism. A lens
 * of no power has it too: the light crosses a curved front away from the vertex.
 */
import type { LensPosition } from './lensPosition.ts';
import { placeLens, type TracedLens, traceToEye } from './lensTrace.ts';
import type { PrismVector } from './types.ts';

/**
 * Prism (prism dioptres, vector towards the base) met by the straight gaze through the back vertex. Throws a
 * RangeError where the ray does not pass the lens.
 */
export function prismInPosition(lens: TracedLens, position: LensPosition): PrismVector {
  const ray = traceToEye(placeLens(lens, position), [0, 0, 0], [0, 0, 1]);
  if (ray === null) {
    throw new RangeError(
      'The straight line of sight does not pass this lens: expected surfaces that let it through.',
    );
  }
  const [x, y, z] = ray.beforeLens;
  return { x: 0 - (100 * x) / z, y: 0 - (100 * y) / z };
}

/** Prism in position less the prism of the same lens without tilt, prism dioptres. */
export function wrapPrism(lens: TracedLens, position: LensPosition): PrismVector {
  const tilted = prismInPosition(lens, position);
  const straight = prismInPosition(lens, { ...position, pantoscopicTiltDeg: 0, faceFormDeg: 0 });
  return { x: tilted.x - straight.x, y: tilted.y - straight.y };
}

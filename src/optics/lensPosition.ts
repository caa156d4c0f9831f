/** How a lens sits before the eye: pantoscopic tilt and face form, and what they do to its axes. */
import { toRadians } from './angle.ts';
import { within } from './domain.ts';
import { nasalSign } from './prismBase.ts';
import type { Eye } from './types.ts';
import type { Axes } from './vector3.ts';

/** Position of wear. The line of sight is straight ahead, along z. */
export interface LensPosition {
  readonly eye: Eye;
  /** Degrees, positive when the lower edge is nearer the face. */
  readonly pantoscopicTiltDeg: number;
  /** Degrees a lens, positive when the temporal edge is nearer the face. */
  readonly faceFormDeg: number;
}

/**
 * The lens's own axes in the wearer's frame: the face form is bent into the frame, and the whole frame is then
 * tilted. Throws a RangeError beyond 45 degrees either way.
 */
export function lensAxes({ eye, pantoscopicTiltDeg, faceFormDeg }: LensPosition): Axes {
  const p = toRadians(within('pantoscopic tilt', pantoscopicTiltDeg, -45, 45, 'degrees'));
  const w = toRadians(within('face form', faceFormDeg, -45, 45, 'degrees')) * nasalSign(eye);
  const [cosP, sinP, cosW, sinW] = [Math.cos(p), Math.sin(p), Math.cos(w), Math.sin(w)];
  return {
    x: [cosW, -sinW * sinP, -sinW * cosP],
    y: [0, cosP, -sinP],
    z: [sinW, cosW * sinP, cosW * cosP],
  };
}

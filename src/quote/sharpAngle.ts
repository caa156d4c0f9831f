/** Sharp-view angle of a pair as it is worn: the narrowest of 8 directions, by exact rays (optics/sharpView). */
import { type SharpView, sharpView } from '../optics/sharpView.ts';
import type { EyeSituation, Situation } from '../rules/situation.ts';
import { opticalTiltDeg } from './placement.ts';

/** Directions asked of each lens. */
const SHARP_DIRECTIONS = 8;

export interface SharpAngles {
  readonly right: readonly SharpView[];
  readonly left: readonly SharpView[];
  /** The narrowest of both lenses, degrees to 0.1. */
  readonly leastDeg: number;
  /** A front whose conic is not known was taken as spherical. */
  readonly spherical: boolean;
}

/** Angles of both lenses; null where a lens is missing or the design is not single vision: not computed there. */
export function sharpAngles(situation: Situation): SharpAngles | null {
  if (situation.design.kind !== 'single-vision') return null;
  const right = ofEye(situation, situation.right);
  const left = ofEye(situation, situation.left);
  if (right === null || left === null) return null;
  const least = Math.min(...[...right, ...left].map(({ angleDeg }) => angleDeg));
  const known = situation.right.lens?.conicKnown && situation.left.lens?.conicKnown;
  return { right, left, leastDeg: Math.round(least * 10) / 10, spherical: !known };
}

function ofEye(situation: Situation, { eye, lens, ordered }: EyeSituation): readonly SharpView[] | null {
  if (lens === null || ordered === null) return null;
  const { material, frame, tiltDeg, habits } = situation;
  const pantoscopicTiltDeg = opticalTiltDeg({ pantoscopicTilt: tiltDeg }, habits);
  return sharpView(
    {
      lens: { ...lens.surfaces, index: material.ne },
      position: { eye, pantoscopicTiltDeg, faceFormDeg: frame.faceFormDeg },
      intended: ordered,
    },
    SHARP_DIRECTIONS,
  );
}

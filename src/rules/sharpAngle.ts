/** Sharp-view angle of a pair as it is worn: the narrowest of 8 directions, by exact rays (optics/sharpView). */
import type { ShopHabits } from '../catalogue/shop.ts';
import { gazeBlur, SHARP_BLUR_D, type SharpView, type SightLine, sharpView } from '../optics/sharpView.ts';
import type { EyeSituation, Situation } from './situation.ts';

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

/**
 * Tilt of a single vision lens to the line of sight, degrees. A centre that was lowered for the tilt lies where the
 * lens's own axis meets the eye's centre of rotation: no tilt is left.
 */
export const tiltToSightDeg = (tiltDeg: number, { singleVisionHeight }: ShopHabits): number =>
  singleVisionHeight === 'lowered-for-tilt' ? 0 : tiltDeg;

/** Angles of both lenses; null where a lens is missing or the design is not single vision: not computed there. */
export function sharpAngles(situation: Situation): SharpAngles | null {
  const sights = sightLines(situation);
  if (sights === null) return null;
  const [right, left] = [sharpView(sights[0], SHARP_DIRECTIONS), sharpView(sights[1], SHARP_DIRECTIONS)];
  const least = Math.min(...[...right, ...left].map(({ angleDeg }) => angleDeg));
  const known = situation.right.lens?.conicKnown && situation.left.lens?.conicKnown;
  return { right, left, leastDeg: Math.round(least * 10) / 10, spherical: !known };
}

/** Whether both lenses are sharp at this gaze in every direction, which is found much sooner; null as above. */
export function sharpTo(situation: Situation, angleDeg: number): boolean | null {
  const sights = sightLines(situation);
  if (sights === null) return null;
  return sights.every((sight) =>
    Array.from({ length: SHARP_DIRECTIONS }, (_, at) => (360 * at) / SHARP_DIRECTIONS).every(
      (directionDeg) =>
        (gazeBlur(sight, { angleDeg, directionDeg })?.blurD ?? Number.POSITIVE_INFINITY) <= SHARP_BLUR_D,
    ),
  );
}

function sightLines(situation: Situation): readonly [SightLine, SightLine] | null {
  if (situation.design.kind !== 'single-vision') return null;
  const right = sightLine(situation, situation.right);
  const left = sightLine(situation, situation.left);
  return right && left && [right, left];
}

function sightLine(situation: Situation, { eye, lens, intended }: EyeSituation): SightLine | null {
  if (lens === null || intended === null) return null;
  const { material, frame, tiltDeg, habits } = situation;
  const pantoscopicTiltDeg = tiltToSightDeg(tiltDeg, habits);
  return {
    lens: { ...lens.surfaces, index: material.ne },
    position: { eye, pantoscopicTiltDeg, faceFormDeg: frame.faceFormDeg },
    intended,
  };
}

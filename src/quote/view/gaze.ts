/** Sharp view by direction of gaze: the angles of rules/sharpAngle as a polar figure takes them. */
import {
  CENTRE_OF_ROTATION_MM,
  LARGEST_GAZE_DEG,
  SHARP_BLUR_D,
  type SharpView,
} from '../../optics/sharpView.ts';
import { round1 } from '../../rules/round.ts';
import { sharpAngles } from '../../rules/sharpAngle.ts';
import type { Situation } from '../../rules/situation.ts';

export interface GazeDirection {
  /** Degrees of the front view. */
  readonly directionDeg: number;
  readonly angleDeg: number;
  readonly endedBy: SharpView['endedBy'];
}

export type GazeView =
  | {
      readonly computed: true;
      readonly right: readonly GazeDirection[];
      readonly left: readonly GazeDirection[];
      readonly leastDeg: number;
      /** Some front's conic is not known and was taken as a sphere. */
      readonly spherical: boolean;
      readonly largestDeg: number;
      readonly blurD: number;
      readonly rotationMm: number;
    }
  | { readonly computed: false; readonly because: 'design' | 'no-power' | 'no-lens' };

/** The gaze figure of a pair, or why there is none. */
export function gazeView(situation: Situation): GazeView {
  if (situation.design.kind === 'plano') return { computed: false, because: 'no-power' };
  if (situation.design.kind !== 'single-vision') return { computed: false, because: 'design' };
  const angles = sharpAngles(situation);
  if (angles === null) return { computed: false, because: 'no-lens' };
  return {
    computed: true,
    right: angles.right.map(direction),
    left: angles.left.map(direction),
    leastDeg: angles.leastDeg,
    spherical: angles.spherical,
    largestDeg: LARGEST_GAZE_DEG,
    blurD: SHARP_BLUR_D,
    rotationMm: CENTRE_OF_ROTATION_MM,
  };
}

const direction = ({ directionDeg, angleDeg, endedBy }: SharpView): GazeDirection => ({
  directionDeg,
  angleDeg: round1(angleDeg),
  endedBy,
});

/**
 * Thickness round the rim. Both eyes are told from the nose over the brow (0 nose, 90 above, 180 temple, 270 below),
 * so that the mirrored lenses of equal eyes give one curve.
 */
import { radiusAt } from '../../optics/outline.ts';
import type { Eye } from '../../optics/types.ts';
import { round2 } from '../../rules/round.ts';
import type { EyeSituation, LensSituation, Situation } from '../../rules/situation.ts';
import { lensAt } from './thickness.ts';

/** A thickness and its angle from the nose. */
export interface EdgePlace {
  readonly mm: number;
  readonly fromNoseDeg: number;
  /** Degrees of the front view, as the answer gives it. */
  readonly atDeg: number;
}

export interface EyeEdge {
  readonly eye: Eye;
  /** Edge thickness every `stepDeg` from the nose, mm. */
  readonly mm: readonly number[];
  readonly thickest: EdgePlace;
  readonly thinnest: EdgePlace;
}

export interface EdgeView {
  readonly stepDeg: number;
  /** 0: no rim, or its depth is not known. */
  readonly rimDepthMm: number;
  readonly estimate: LensSituation['estimate'];
  readonly right: EyeEdge;
  readonly left: EyeEdge;
}

const STEP_DEG = 4;

/** Edge thickness of both lenses; null where a lens is missing. */
export function edgeView(situation: Situation): EdgeView | null {
  const right = eyeEdge(situation, situation.right);
  const left = eyeEdge(situation, situation.left);
  if (right === null || left === null) return null;
  const { rimDepthMm } = situation.frame;
  return { stepDeg: STEP_DEG, rimDepthMm, estimate: situation.right.lens?.estimate ?? null, right, left };
}

/** An angle of the front view told from the nose, and back again: the same turn undoes itself. */
export const fromNoseDeg = (eye: Eye, atDeg: number): number =>
  (((eye === 'right' ? atDeg : 180 - atDeg) % 360) + 360) % 360;

function eyeEdge(situation: Situation, { eye, lens, reference, outline }: EyeSituation): EyeEdge | null {
  if (lens === null || reference === null) return null;
  const surfaces = lensAt(lens, situation.material);
  const mm = Array.from({ length: 360 / STEP_DEG }, (_, i) => {
    const atDeg = fromNoseDeg(eye, i * STEP_DEG);
    const radius = radiusAt(outline, atDeg);
    const at = (atDeg * Math.PI) / 180;
    const { thicknessMm } = surfaces(
      radius * Math.cos(at) - reference.xMm,
      radius * Math.sin(at) - reference.yMm,
    );
    return round2(thicknessMm);
  });
  const place = ({ mm: placeMm, atDeg }: LensSituation['thickest']): EdgePlace => ({
    mm: placeMm,
    atDeg,
    fromNoseDeg: fromNoseDeg(eye, atDeg),
  });
  return { eye, mm, thickest: place(lens.thickest), thinnest: place(lens.thinnest) };
}

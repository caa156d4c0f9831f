import type { MountingKind } from '../catalogue/frame.ts';

/** Measurements of the frame with the outline of its right lens, mm and degrees. */
export interface OwnMeasures {
  readonly aMm: number;
  readonly bMm: number;
  readonly dblMm: number;
  readonly faceFormDeg: number;
  readonly mounting: MountingKind;
  readonly radiiMm: readonly number[];
  readonly outlineOrigin: 'traced' | 'fitted';
}

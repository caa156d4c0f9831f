/** Points as a drawing takes them: few, and rounded to 0.01 mm, so that a view stays small on its way to the page. */
import { outlinePoint } from '../../optics/outline.ts';
import type { Outline, PointMm } from '../../optics/types.ts';
import { round2 } from '../../rules/round.ts';

/** A row of points as `x, y, x, y`, mm. */
export type FlatPoints = readonly number[];

/** Points that an outline is drawn by: 3 degrees apart, which a smooth curve through them follows to 0.02 mm. */
const OUTLINE_POINTS = 120;

/** A point to 0.01 mm. */
export const rounded = ({ xMm, yMm }: PointMm): PointMm => ({ xMm: round2(xMm), yMm: round2(yMm) });

/** About 120 of an outline's own points, counter-clockwise from +x, mm from its boxed centre. */
export function outlineFlat(outline: Outline): FlatPoints {
  const count = outline.radiiMm.length;
  const stride = Math.max(1, Math.round(count / OUTLINE_POINTS));
  const flat: number[] = [];
  for (let i = 0; i < count; i += stride) {
    const { xMm, yMm } = outlinePoint(outline, i);
    flat.push(round2(xMm), round2(yMm));
  }
  return flat;
}

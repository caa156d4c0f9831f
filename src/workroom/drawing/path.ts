/** SVG numbers and paths: 1 user unit is 1 mm, y turned down, two decimals. */
import { outlinePoint } from '../../optics/outline.ts';
import type { Outline, PointMm } from '../../optics/types.ts';

/** A number as SVG wants it. */
export const num = (value: number): string => String(Math.round(value * 100) / 100 + 0);

/** A point as `x y` with y down. */
export const xy = ({ xMm, yMm }: PointMm): string => `${num(xMm)} ${num(-yMm)}`;

/** Closed path through every point of an outline. */
export function outlinePath(outline: Outline): string {
  return `M${outline.radiiMm.map((_, i) => xy(outlinePoint(outline, i))).join('L')}Z`;
}

/** A straight line between two points. */
export const linePath = (from: PointMm, to: PointMm): string => `M${xy(from)}L${xy(to)}`;

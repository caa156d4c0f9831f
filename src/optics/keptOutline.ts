/**
 * What every package of a frame asks of the same outline, worked out once and kept as long as the outline lives:
 * its points, its area, and whether its radii are possible at all. Not to be written to.
 */
import { type OutlinePoints, outlinePoints } from './outline.ts';
import type { Outline } from './types.ts';

/** Points, area and first impossible radius of an outline. */
export interface KeptOutline extends OutlinePoints {
  /** Mean of r2/2 over the angles, mm squared: the area of the smooth rim through the points. */
  readonly areaMm2: number;
  /** Index of the first radius outside 0.5 to 100 mm, or -1. */
  readonly impossibleAt: number;
}

const kept = new WeakMap<Outline, KeptOutline>();

/** The kept figures of an outline, mm from the origin of its radii. */
export function keptOutline(outline: Outline): KeptOutline {
  let found = kept.get(outline);
  if (!found) {
    const { radiiMm } = outline;
    found = {
      ...outlinePoints(outline),
      areaMm2: (radiiMm.reduce((sum, r) => sum + r * r, 0) * Math.PI) / radiiMm.length,
      impossibleAt: radiiMm.findIndex((r) => !(r >= 0.5 && r <= 100)),
    };
    kept.set(outline, found);
  }
  return found;
}

/** Thickness of a finished lens anywhere on its face, and as a grid for drawings. Places from the boxed centre, mm. */
import type { FinishedLens } from './finishedLens.ts';
import type { LensToMake } from './lensToMake.ts';
import { box, inside } from './outline.ts';
import { conicSag } from './surface.ts';
import { profileOn, rise, thicknessField } from './thicknessField.ts';
import type { PointMm } from './types.ts';

/** Thicknesses on a square grid; row 0 is the lowest, column 0 the leftmost. Null outside the outline. */
export interface ThicknessMap {
  readonly stepMm: number;
  readonly leftMm: number;
  readonly bottomMm: number;
  readonly columns: number;
  readonly rows: number;
  readonly mm: readonly (number | null)[];
}

/** A function that gives the thickness of the lens at a place, mm along the axis; NaN where a surface ends. */
export function thicknessOver(order: LensToMake, lens: FinishedLens): (place: PointMm) => number {
  const profile = profileOn(lens.front, lens.back, order.profile, order.index);
  const field = thicknessField(lens.front, lens.back, profile);
  return ({ xMm, yMm }) =>
    lens.centreThicknessMm + rise(field, xMm - order.reference.xMm, yMm - order.reference.yMm);
}

/** Depth of the front surface at each outline point behind its vertex, mm; for bevels that follow a curve. */
export function frontAtEdgeMm(order: LensToMake, lens: FinishedLens): number[] {
  const { radiiMm } = order.outline;
  return radiiMm.map((r, i) => {
    const angle = (2 * Math.PI * i) / radiiMm.length;
    const x = r * Math.cos(angle) - order.reference.xMm;
    const y = r * Math.sin(angle) - order.reference.yMm;
    return conicSag(1 / lens.front.radiusMm, lens.front.conic, x * x + y * y);
  });
}

/** The thickness of a finished lens on a grid of `stepMm` over its box. */
export function thicknessMap(order: LensToMake, lens: FinishedLens, stepMm: number): ThicknessMap {
  const { minX, maxX, minY, maxY } = box(order.outline);
  const columns = Math.floor((maxX - minX) / stepMm) + 1;
  const rows = Math.floor((maxY - minY) / stepMm) + 1;
  const thickness = thicknessOver(order, lens);
  const mm: (number | null)[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const place = { xMm: minX + column * stepMm, yMm: minY + row * stepMm };
      mm.push(inside(order.outline, place) ? thickness(place) : null);
    }
  }
  return { stepMm, leftMm: minX, bottomMm: minY, columns, rows, mm };
}

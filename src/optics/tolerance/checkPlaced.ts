/** Items that are one number ordered and one measured: heights, thickness, base curve, segment tilt and the like. */
import { axisDistanceDeg } from '../angle.ts';
import type { Eye } from '../types.ts';
import { type InspectedItem, judge } from './limit.ts';
import { type Basis, type LensTolerances, PLACED_ITEMS, type PlacedItem } from './table.ts';

/** One number as ordered and as measured. */
export interface Compared {
  readonly ordered: number;
  /** Null: has to be measured, and was not. */
  readonly measured: number | null;
}

/** Items of one number by name; those left out are not judged. */
export type ComparedItems = Readonly<Partial<Record<PlacedItem, Compared>>>;

/** The items of one number, each against the limit its table holds. */
export function checkPlaced(
  eye: Eye | 'both',
  placed: ComparedItems | undefined,
  table: LensTolerances,
  basis: Basis,
): readonly InspectedItem[] {
  return (Object.keys(PLACED_ITEMS) as PlacedItem[]).flatMap((item) => {
    const compared = placed?.[item];
    if (compared === undefined) return [];
    const tolerance = table.placed[item];
    const held = { limit: tolerance?.limit ?? null, unit: PLACED_ITEMS[item], band: null };
    const { ordered, measured } = compared;
    const off = (found: number) =>
      item === 'polarising-axis' ? axisDistanceDeg(ordered, found) : found - ordered;
    const deviation = measured === null ? null : off(measured);
    return [judge({ item, eye, ordered, measured, basis: tolerance?.basis ?? basis }, deviation, held)];
  });
}

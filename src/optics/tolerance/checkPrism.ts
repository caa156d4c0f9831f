/**
 * Mounted prism of the pair against its order, horizontally and vertically.
 *
 * Prism is compared at the ordered reference points, the eyes together: what both eyes have alike (thinning prism,
 * base up and up) cancels. In strong meridians the place of the reference points is limited instead of the prism.
 */

import { toPowerMatrix } from '../powerMatrix.ts';
import { addPrisms, decentrationForPrism, prismOfMisplacedCentre } from '../prism.ts';
import { pairPrism } from '../prismBase.ts';
import type { PointMm, PrismVector, SpheroCylinder } from '../types.ts';
import { type HeldLimit, type InspectedItem, judge, limitFor } from './limit.ts';
import type { Basis, PrismTolerance } from './table.ts';

/** One mounted lens. Give the prism measured at the ordered reference point, the place of the centre, or both: each
 * is computed from the other. */
export interface MountedLens {
  readonly power: SpheroCylinder;
  readonly ordered: PrismVector;
  /** At the ordered reference point, prism dioptres. Computed from `centreFromOrdered` when left out. */
  readonly measured?: PrismVector;
  /** Where the reference point (of the ordered prism) was found, from where it was ordered, front view, mm. */
  readonly centreFromOrdered?: PointMm;
}

/** Both limits, of the kind of lens inspected. */
export interface PrismTolerances {
  readonly horizontal: PrismTolerance | null;
  readonly vertical: PrismTolerance | null;
}

type Direction = 'horizontal' | 'vertical';

/** The items horizontal and vertical prism (or, in strong meridians, place of the reference points). */
export function checkPrism(
  right: MountedLens,
  left: MountedLens,
  table: PrismTolerances,
  basis: Basis,
): readonly InspectedItem[] {
  return (['horizontal', 'vertical'] as const).flatMap((direction) => {
    const tolerance = table[direction];
    const own = tolerance?.basis ?? basis;
    const strong = tolerance !== null && meridian(right, left, direction) > tolerance.strongOverD;
    return strong
      ? placeItems(right, left, direction, tolerance, own)
      : [prismItem(right, left, direction, tolerance, own)];
  });
}

function prismItem(
  right: MountedLens,
  left: MountedLens,
  direction: Direction,
  tolerance: PrismTolerance | null,
  basis: Basis,
): InspectedItem {
  const component = (prism: PrismVector) => Math.abs(direction === 'horizontal' ? prism.x : prism.y);
  const largest = Math.max(component(right.ordered), component(left.ordered));
  const held = limitFor(tolerance?.byOrderedPrism ?? null, 'ordered prism', largest, 'prism dioptres');
  const ordered = together(right.ordered, left.ordered, direction);
  const [r, l] = [found(right), found(left)];
  const measured = r === null || l === null ? null : together(r, l, direction);
  const deviation = measured === null ? null : measured - ordered;
  return judge({ item: `${direction}-prism`, eye: 'both', ordered, measured, basis }, deviation, held);
}

function placeItems(
  right: MountedLens,
  left: MountedLens,
  direction: Direction,
  tolerance: PrismTolerance,
  basis: Basis,
): readonly InspectedItem[] {
  const value = meridian(right, left, direction);
  const band = { quantity: `${direction} meridian`, value, over: tolerance.strongOverD, upTo: Infinity };
  const held: HeldLimit = { limit: tolerance.strongMm, unit: 'mm', band };
  const item = `${direction}-reference-point`;
  const off = (lens: MountedLens) => displacement(lens, direction, value, tolerance.strongOverD);
  const [r, l] = [off(right), off(left)];
  if (tolerance.strongOf === 'each') {
    return [
      judge({ item, eye: 'right', ordered: 0, measured: r, basis }, r, held),
      judge({ item, eye: 'left', ordered: 0, measured: l, basis }, l, held),
    ];
  }
  // The right lens stands at the viewer's left: the PD is too large where l - r is positive.
  const apart = r === null || l === null ? null : direction === 'horizontal' ? l - r : r - l;
  return [judge({ item, eye: 'both', ordered: 0, measured: apart, basis }, apart, held)];
}

/** Power of the stronger lens in this direction, D, 0 or more. */
const meridian = (right: MountedLens, left: MountedLens, direction: Direction): number =>
  Math.max(Math.abs(along(right, direction)), Math.abs(along(left, direction)));

function along({ power }: MountedLens, direction: Direction): number {
  const { xx, yy } = toPowerMatrix(power);
  return direction === 'horizontal' ? xx : yy;
}

/**
 * How far the reference point is off in a direction, mm: where its marks were found, or where the measured prism says
 * it is, whichever is worse. A lens may be marked right and ground wrong. Null: neither is known.
 */
function displacement(
  lens: MountedLens,
  direction: Direction,
  strongestD: number,
  strongOverD: number,
): number | null {
  const { centreFromOrdered: found, measured } = lens;
  const marked = found === undefined ? null : direction === 'horizontal' ? found.xMm : found.yMm;
  const ground = measured === undefined ? null : byPrism(lens, measured, direction, strongestD, strongOverD);
  if (marked === null || ground === null) return marked ?? ground;
  return Math.abs(ground) > Math.abs(marked) ? ground : marked;
}

/** A weak lens beside a strong one: its excess counts as the place at which the strong one would give it. */
function byPrism(
  lens: MountedLens,
  measured: PrismVector,
  direction: Direction,
  strongestD: number,
  strongOverD: number,
): number {
  const excess = { x: measured.x - lens.ordered.x, y: measured.y - lens.ordered.y };
  const own = along(lens, direction);
  const move = decentrationForPrism(lens.power, excess);
  if (Math.abs(own) > strongOverD && move.ok)
    return direction === 'horizontal' ? move.value.xMm : move.value.yMm;
  return (10 * (direction === 'horizontal' ? excess.x : excess.y)) / (own < 0 ? -strongestD : strongestD);
}

function found(lens: MountedLens): PrismVector | null {
  if (lens.measured !== undefined) return lens.measured;
  if (lens.centreFromOrdered === undefined) return null;
  return addPrisms(lens.ordered, prismOfMisplacedCentre(lens.power, lens.centreFromOrdered));
}

function together(right: PrismVector, left: PrismVector, direction: Direction): number {
  const { baseIn, rightBaseUp } = pairPrism(right, left);
  return direction === 'horizontal' ? baseIn : rightBaseUp;
}

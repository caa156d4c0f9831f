/**
 * Prism of the two eyes against each other at the reading level, as vectors, the ordered prism included.
 *
 * Thin lenses: Prentice at the point where each line of sight crosses its lens when reading.
 */
import { within } from './domain.ts';
import { addPrisms, NO_PRISM, prenticePrism } from './prism.ts';
import { nasalSign, type PairPrism, pairPrism } from './prismBase.ts';
import type { Eye, PrismVector, SpheroCylinder } from './types.ts';

/** One eye's distance power (D) and the prism ordered at its distance reference point (prism dioptres). */
export interface OrderedLens {
  readonly power: SpheroCylinder;
  readonly prism?: PrismVector;
}

/** Where the line of sight crosses a lens in reading, from its distance reference point, mm. */
export interface ReadingPoint {
  /** Below the reference point, 0 or more. */
  readonly dropMm: number;
  /** Towards the nose; 0 when not given. */
  readonly insetMm?: number;
}

/** Vertical imbalance from which a slab-off is usually considered, prism dioptres (Brooks & Borish, from memory). */
export const SLAB_OFF_CONSIDERED_FROM = 1.5;

/**
 * Imbalance at the reading level, prism dioptres: `rightBaseUp` is negative where the right eye has more base down.
 * Throws a RangeError for a drop below 0.
 */
export function readingImbalance(right: OrderedLens, left: OrderedLens, point: ReadingPoint): PairPrism {
  within('reading drop', point.dropMm, 0, 40, 'mm');
  return pairPrism(prismAt('right', right, point), prismAt('left', left, point));
}

function prismAt(eye: Eye, lens: OrderedLens, { dropMm, insetMm = 0 }: ReadingPoint): PrismVector {
  const here = prenticePrism(lens.power, { xMm: nasalSign(eye) * insetMm, yMm: -dropMm });
  return addPrisms(lens.prism ?? NO_PRISM, here);
}

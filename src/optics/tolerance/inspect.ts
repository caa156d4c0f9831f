/** A measured pair against its order, by one tolerance table: every item with limit, deviation, band and outcome. */
import type { Eye, PointMm, PrismVector, SpheroCylinder } from '../types.ts';
import { type ComparedItems, checkPlaced } from './checkPlaced.ts';
import { checkAdd, checkPower } from './checkPower.ts';
import { checkPrism, type MountedLens } from './checkPrism.ts';
import type { InspectedItem } from './limit.ts';
import type { LensKind, LensTolerances, ToleranceStandard } from './table.ts';

/** One lens: its order and what was measured. Powers in D, either sign of cylinder; prism dioptres; mm. */
export interface InspectedLens {
  readonly ordered: { readonly power: SpheroCylinder; readonly addD?: number; readonly prism?: PrismVector };
  readonly measured: {
    readonly power: SpheroCylinder;
    readonly addD?: number;
    /** At the ordered reference point. */
    readonly prism?: PrismVector;
    /** Where the reference point was found, from where it was ordered (front view). */
    readonly centreFromOrdered?: PointMm;
  };
  readonly placed?: ComparedItems;
}

/** A pair to inspect; an absent eye is not judged. */
export interface InspectedPair {
  readonly kind: LensKind;
  readonly right: InspectedLens | null;
  readonly left: InspectedLens | null;
  /** Items of the pair, such as the difference of the segment heights. */
  readonly placed?: ComparedItems;
}

/** Outcome of an inspection. */
export interface Inspection {
  readonly items: readonly InspectedItem[];
  /** Item closest to its limit, or furthest beyond it; null where nothing was judged. */
  readonly decisive: InspectedItem | null;
  /**
   * Whether the pair passes; null while it is open: an ordered item was not measured, nothing was judged, or a fault
   * rests on figures from memory, which never decide by default.
   */
  readonly passed: boolean | null;
  /** Whether any judged item rests on figures from memory: the printed sheet has to say so. */
  readonly fromMemory: boolean;
}

/** Inspects a pair. `acceptMemory` lets figures from memory decide: the shop has verified them. */
export function inspect(pair: InspectedPair, standard: ToleranceStandard, acceptMemory = false): Inspection {
  const table = standard.lenses[pair.kind];
  const items = [
    ...eyeItems('right', pair.right, table, standard),
    ...eyeItems('left', pair.left, table, standard),
    ...prismItems(pair, table, standard),
    ...checkPlaced('both', pair.placed, table, standard.basis),
  ];
  const judged = items.filter(({ outcome }) => outcome === 'pass' || outcome === 'fail');
  const remembered = judged.filter(({ basis }) => basis === 'from memory');
  const deciding = acceptMemory ? judged : judged.filter(({ basis }) => basis !== 'from memory');
  return {
    items,
    decisive: judged.reduce<InspectedItem | null>(
      (worst, item) => (share(item) > share(worst) ? item : worst),
      null,
    ),
    passed: verdict(deciding, complete(items), acceptMemory ? [] : remembered),
    fromMemory: remembered.length > 0,
  };
}

const complete = (items: readonly InspectedItem[]) =>
  items.every(({ outcome }) => outcome !== 'not measured');

/** A limit that may decide and fails settles it; a pass stands only when nothing is left open. */
function verdict(
  deciding: readonly InspectedItem[],
  allMeasured: boolean,
  remembered: readonly InspectedItem[],
): boolean | null {
  if (deciding.some(({ outcome }) => outcome === 'fail')) return false;
  if (deciding.length === 0 || !allMeasured) return null;
  return remembered.some(({ outcome }) => outcome === 'fail') ? null : true;
}

const share = (item: InspectedItem | null): number =>
  item === null || item.deviation === null || item.limit === null
    ? -1
    : Math.abs(item.deviation) / Math.max(item.limit, 1e-9);

function eyeItems(
  eye: Eye,
  lens: InspectedLens | null,
  table: LensTolerances,
  { basis }: ToleranceStandard,
): readonly InspectedItem[] {
  if (lens === null) return [];
  const power = { eye, ordered: lens.ordered.power, measured: lens.measured.power };
  const { addD } = lens.ordered;
  return [
    ...checkPower(power, table, basis),
    ...(addD === undefined ? [] : [checkAdd(eye, addD, lens.measured.addD ?? null, table, basis)]),
    ...checkPlaced(eye, lens.placed, table, basis),
  ];
}

function prismItems(
  { right, left }: InspectedPair,
  table: LensTolerances,
  { basis }: ToleranceStandard,
): readonly InspectedItem[] {
  if (right === null || left === null) return [];
  const limits = { horizontal: table.horizontalPrism, vertical: table.verticalPrism };
  return checkPrism(mounted(right), mounted(left), limits, basis);
}

const mounted = ({ ordered, measured }: InspectedLens): MountedLens => ({
  power: ordered.power,
  ordered: ordered.prism ?? { x: 0, y: 0 },
  ...(measured.prism === undefined ? {} : { measured: measured.prism }),
  ...(measured.centreFromOrdered === undefined ? {} : { centreFromOrdered: measured.centreFromOrdered }),
});

/** What an inspection finds: items with their outcome, and what would bring a failed pair in. */
import type { Inspection } from '../../optics/tolerance/inspect.ts';
import type { InspectedItem } from '../../optics/tolerance/limit.ts';
import type { ToleranceStandard } from '../../optics/tolerance/table.ts';
import type { MeasuredPair } from './measured.ts';

/** What brings an item in: the lens is cut again from a fresh blank, ordered again, or the item measured (again). */
export type Cure = 'recut' | 'reorder' | 'measure';

export interface CureOf {
  readonly item: InspectedItem;
  readonly cure: Cure;
  /** How far the deviation has to come back to meet its limit, in the item's unit; null where it was not measured. */
  readonly by: number | null;
}

export interface PairInspection {
  readonly inspection: Inspection;
  readonly profile: ToleranceStandard;
  readonly measured: MeasuredPair;
  readonly cures: readonly CureOf[];
  /** Numbers, from 1, of the lines of the alignment list that do not hold. */
  readonly misaligned: readonly number[];
  /** Tolerances and alignment together; null: open. */
  readonly passed: boolean | null;
}

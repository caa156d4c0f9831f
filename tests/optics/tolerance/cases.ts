/** Shorthand for inspected pairs: what the tests of the tolerance tables share. */
import { expect } from 'vitest';
import {
  type InspectedLens,
  type InspectedPair,
  type Inspection,
  inspect,
} from '../../../src/optics/tolerance/inspect.ts';
import type { InspectedItem, ItemOutcome } from '../../../src/optics/tolerance/limit.ts';
import {
  type LensKind,
  type LimitUnit,
  PLACED_ITEMS,
  type ToleranceStandard,
} from '../../../src/optics/tolerance/table.ts';
import type { SpheroCylinder } from '../../../src/optics/types.ts';

/** A power in D. */
export const rx = (sphereD: number, cylinderD = 0, axisDeg = 180): SpheroCylinder => ({
  sphereD,
  cylinderD,
  axisDeg,
});

/** A lens ordered as one power and measured as another, its centre in place. */
export const lens = (
  ordered: SpheroCylinder,
  measured: SpheroCylinder = ordered,
  more: Partial<InspectedLens['measured']> = {},
): InspectedLens => ({
  ordered: { power: ordered },
  measured: { power: measured, centreFromOrdered: { xMm: 0, yMm: 0 }, ...more },
});

/** A pair of one kind, equal on both sides unless given. */
export const pair = (kind: LensKind, right: InspectedLens, left: InspectedLens = right): InspectedPair => ({
  kind,
  right,
  left,
});

/** The one item of this name (of the right eye where both have it). */
export function item({ items }: Inspection, name: string): InspectedItem {
  const found = items.find((one) => one.item === name);
  if (found === undefined) throw new Error(`no item ${name}`);
  return found;
}

/** Unit in which the limit of an item is given. */
const UNITS: Readonly<Record<string, LimitUnit>> = {
  ...PLACED_ITEMS,
  power: 'D',
  cylinder: 'D',
  axis: 'degrees',
  add: 'D',
};

/** Inspects one single-vision lens and holds one of its items to an outcome and a limit. */
export function expectItem(
  standard: ToleranceStandard,
  kind: LensKind,
  one: InspectedLens,
  name: string,
  outcome: ItemOutcome,
  limit: number | null,
): void {
  const found = item(inspect({ kind, right: one, left: null }, standard), name);
  expect(found.outcome, JSON.stringify(found)).toBe(outcome);
  expect([found.eye, found.unit]).toEqual(['right', UNITS[name]]);
  if (limit === null) expect(found.limit).toBeNull();
  else expect(found.limit).toBeCloseTo(limit, 9);
}

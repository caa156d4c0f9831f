/**
 * Power, cylinder, axis and add of one lens against its order.
 *
 * Both are brought to minus-cylinder form; deviations are taken in the meridians of the order, those of a sphere
 * being the meridians of the lens as measured.
 */
import { axisDistanceDeg } from '../angle.ts';
import { meridianPowerD, strongestMeridianD, toMinusCylinder } from '../prescription.ts';
import type { Eye, SpheroCylinder } from '../types.ts';
import { type InspectedItem, judge, limitFor } from './limit.ts';
import type { Basis, LensTolerances } from './table.ts';

/** Order and measurement of one lens, D; either sign of cylinder. */
export interface PowerCheck {
  readonly eye: Eye;
  readonly ordered: SpheroCylinder;
  readonly measured: SpheroCylinder;
}

/** The items power, cylinder and axis. */
export function checkPower(check: PowerCheck, table: LensTolerances, basis: Basis): readonly InspectedItem[] {
  const ordered = toMinusCylinder(check.ordered);
  const measured = toMinusCylinder(check.measured);
  const lens = { eye: check.eye, ordered, measured, table, basis };
  return [powerItem(lens), cylinderItem(lens), axisItem(lens)];
}

/** The item add; ordered and measured in D, measured null where it was not taken. */
export function checkAdd(
  eye: Eye,
  ordered: number,
  measured: number | null,
  table: LensTolerances,
  basis: Basis,
): InspectedItem {
  const held = limitFor(table.add, 'add', ordered, 'D');
  return judge(
    { item: 'add', eye, ordered, measured, basis },
    measured === null ? null : measured - ordered,
    held,
  );
}

/** Order and measurement in minus-cylinder form, and what judges them. */
interface JudgedLens extends PowerCheck {
  readonly table: LensTolerances;
  readonly basis: Basis;
}

function powerItem({ eye, ordered, measured, table, basis }: JudgedLens): InspectedItem {
  const axisDeg = ordered.cylinderD === 0 ? measured.axisDeg : ordered.axisDeg;
  const principal = [axisDeg, axisDeg + 90].map((meridianDeg) => ({
    ordered: meridianPowerD(ordered, meridianDeg),
    measured: meridianPowerD(measured, meridianDeg),
  })) as [MeridianPair, MeridianPair];
  const { meridians, bands } = table.power ?? { meridians: 'strongest', bands: null };
  const asked = meridians === 'sphere' ? principal[0] : chosen(principal, meridians);
  const bandValue = meridians === 'sphere' ? ordered.sphereD : strongestMeridianD(ordered);
  const held = limitFor(bands, meridians === 'sphere' ? 'sphere' : 'strongest meridian', bandValue, 'D');
  return judge({ item: 'power', eye, ...asked, basis }, asked.measured - asked.ordered, held);
}

interface MeridianPair {
  readonly ordered: number;
  readonly measured: number;
}

/** The stronger meridian of the order (of the lens, where the order has none), or the one further off. */
function chosen([a, b]: readonly [MeridianPair, MeridianPair], by: 'strongest' | 'each'): MeridianPair {
  if (by === 'each') return Math.abs(b.measured - b.ordered) > Math.abs(a.measured - a.ordered) ? b : a;
  const difference = Math.abs(b.ordered) - Math.abs(a.ordered);
  if (Math.abs(difference) > 1e-9) return difference > 0 ? b : a;
  return Math.abs(a.ordered - b.ordered) < 1e-9 && Math.abs(b.measured) > Math.abs(a.measured) ? b : a;
}

function cylinderItem({ eye, ordered, measured, table, basis }: JudgedLens): InspectedItem {
  const axisDeg = ordered.cylinderD === 0 ? measured.axisDeg : ordered.axisDeg;
  const found = meridianPowerD(measured, axisDeg + 90) - meridianPowerD(measured, axisDeg);
  const strongest = Math.abs(strongestMeridianD(ordered));
  const row = table.cylinder?.find(({ strongestUpToD }) => strongest <= strongestUpToD);
  const held = limitFor(row?.bands ?? null, 'cylinder', ordered.cylinderD, 'D');
  return judge(
    { item: 'cylinder', eye, ordered: ordered.cylinderD, measured: found, basis },
    found - ordered.cylinderD,
    held,
  );
}

/** An order without cylinder has no axis to hold; neither has a lens that was measured without one. */
function axisItem({ eye, ordered, measured, table, basis }: JudgedLens): InspectedItem {
  const both = measured.cylinderD !== 0 && ordered.cylinderD !== 0;
  const held = limitFor(both ? table.axis : null, 'cylinder', ordered.cylinderD, 'degrees');
  return judge(
    { item: 'axis', eye, ordered: ordered.axisDeg, measured: both ? measured.axisDeg : null, basis },
    both ? axisDistanceDeg(ordered.axisDeg, measured.axisDeg) : null,
    held,
  );
}

/** Which ready-made lens serves an eye: one from a power grid, as thick as it comes. */
import type { Design } from '../catalogue/design.ts';
import type { Material, StockBlanks } from '../catalogue/material.ts';
import { sphericalEquivalentD, toMinusCylinder } from '../optics/prescription.ts';
import { prismAmount } from '../optics/prism.ts';
import type { LensRefusal } from '../rules/situation.ts';
import type { LensJob } from './lensJob.ts';

/** A blank of a power, and the form that it comes in. */
export interface StockChoice {
  readonly blanks: StockBlanks;
  readonly baseCurveD: number;
  readonly centreThicknessMm: number;
}

const ROUNDING = 1e-9;

/** Ranges that could serve a pair at all, whatever the powers: with the coating and tint asked for. */
export function stockRangesFor(
  design: Design,
  material: Material,
  tint: string | null,
  coating: string | null,
): readonly StockBlanks[] {
  if (design.kind !== 'single-vision' && design.kind !== 'plano') return [];
  return material.stock.filter(
    (blanks) =>
      (coating === null || blanks.coatings.includes(coating)) &&
      (tint === null || blanks.tints.includes(tint)),
  );
}

/** The lens of one range for one eye, or why the range has none. A ground prism is not to be had from stock. */
export function stockChoice(blanks: StockBlanks, lens: LensJob): StockChoice | LensRefusal {
  const { sphereD, cylinderD } = toMinusCylinder(lens.power);
  const prism = prismAmount(lens.prism);
  const { from, to } = blanks.sphereD;
  const fits =
    prism < 0.005 &&
    sphereD >= from &&
    sphereD <= to &&
    -cylinderD <= blanks.cylinderD &&
    onGrid(sphereD, blanks.stepD) &&
    onGrid(cylinderD, blanks.stepD);
  const meanD = sphericalEquivalentD(lens.power);
  const form = blanks.forms.find(({ toD }) => meanD <= toD + ROUNDING);
  if (fits && form !== undefined)
    return { blanks, baseCurveD: form.baseCurveD, centreThicknessMm: form.centreThicknessMm };
  return {
    reason: 'not-in-stock',
    figures: { sphereD, cylinderD, fromD: from, toD: to, mostD: -blanks.cylinderD, stepAbsD: blanks.stepD },
  };
}

const onGrid = (valueD: number, stepD: number) =>
  Math.abs(valueD / stepD - Math.round(valueD / stepD)) < ROUNDING * 1e3;

/** True surface powers that surfaced blanks of a material offer, D. */
export const surfacedCurvesD = (material: Material): readonly number[] =>
  (material.surfaced?.baseCurves ?? []).map(({ powerD }) => powerD);

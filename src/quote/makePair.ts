/**
 * Both lenses of a pair, from stock or surfaced: base curve, blank, thickness, mass. Stock serves a pair when it
 * serves both eyes, since two kinds side by side would not match.
 */
import type { StockBlanks } from '../catalogue/material.ts';
import { chooseBaseCurve } from '../optics/baseCurve.ts';
import { toMinusCylinder } from '../optics/prescription.ts';
import type { LensRefusal } from '../rules/situation.ts';
import type { LensJob, MadeLens, PairJob } from './lensJob.ts';
import { makeLens } from './makeLens.ts';
import { stockChoice, stockRangesFor, surfacedCurvesD } from './stockBlank.ts';

export interface MadePair {
  readonly right: MadeLens;
  readonly left: MadeLens;
  /** The range that both were taken from; null: surfaced. */
  readonly stock: StockBlanks | null;
}

/** The pair by the blanks asked for; `auto` takes stock where it fits both eyes, else surfaced lenses. */
export function makePair(job: PairJob): MadePair {
  const ranges =
    job.blank === 'surfaced' ? [] : stockRangesFor(job.design, job.material, job.tint, job.coating);
  const fromStock = ranges.map((range) => makeFromStock(job, range));
  const good = fromStock.find(({ right, left }) => sound(right) && sound(left));
  if (good !== undefined) return good;
  if (job.blank !== 'stock' && job.material.surfaced !== null) return makeSurfaced(job);
  return fromStock[0] ?? refuseBoth({ reason: 'no-blanks', figures: {} });
}

const sound = ({ lens }: MadeLens) =>
  lens !== null && lens.blank.spareMm >= 0 && lens.shortfalls.length === 0;

function makeFromStock(job: PairJob, range: StockBlanks): MadePair {
  const one = (lens: LensJob): MadeLens => {
    const choice = stockChoice(range, lens);
    if ('reason' in choice) return refuse(choice);
    return makeLens(job, lens, {
      kind: 'stock',
      baseCurveD: choice.baseCurveD,
      conic: null,
      centreThicknessMm: choice.centreThicknessMm,
      diametersMm: [range.diameterMm],
    });
  };
  return { right: one(job.right), left: one(job.left), stock: range };
}

function makeSurfaced(job: PairJob): MadePair {
  const { material, frame, habits } = job;
  const chosen = chooseBaseCurve({
    offeredD: hollowBacked(surfacedCurvesD(material), [job.right, job.left]),
    right: job.right.power,
    left: job.left.power,
    index: material.ne,
    frameCurveD: frame.situation.frameCurveD,
    sharedUpToD: habits.baseCurveDifferenceD,
  });
  if (!chosen.ok || material.surfaced === null)
    return refuseBoth({
      reason: 'no-base-curve',
      figures: { offered: surfacedCurvesD(material).join(', ') },
    });
  const { baseCurves, diametersMm } = material.surfaced;
  const one = (lens: LensJob): MadeLens => {
    const baseCurveD = chosen[lens.eye]?.baseCurveD ?? 0;
    return makeLens(job, lens, {
      kind: 'surfaced',
      baseCurveD,
      conic: baseCurves.find(({ powerD }) => powerD === baseCurveD)?.conic ?? null,
      centreThicknessMm: null,
      diametersMm,
    });
  };
  return { right: one(job.right), left: one(job.left), stock: null };
}

/**
 * Curves that leave the back hollow in every meridian of both eyes; a back that bulges touches the lashes. Where none
 * does, the steepest bulges least, whatever the rim's own curve.
 */
function hollowBacked(offeredD: readonly number[], lenses: readonly LensJob[]): readonly number[] {
  const strongestPlusD = Math.max(...lenses.map(({ power }) => toMinusCylinder(power).sphereD));
  const hollow = offeredD.filter((powerD) => powerD >= strongestPlusD);
  return hollow.length > 0 || offeredD.length === 0 ? hollow : [Math.max(...offeredD)];
}

const refuse = (refusal: LensRefusal): MadeLens => ({ lens: null, refusal });

const refuseBoth = (refusal: LensRefusal): MadePair => ({
  right: refuse(refusal),
  left: refuse(refusal),
  stock: null,
});

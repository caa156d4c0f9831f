/**
 * Which centre thickness a lens needs: the least for which the reference point, the edge, the thinnest place inside
 * and each hole meet their limits. Limits act on `thickness = centre + rise`, so each asks for `limit - rise`.
 *
 * Inside a minus lens with prism the thinnest place is its optical centre, beside the reference point. The lens is
 * the same as one decentred without prism, so the centre limit holds there. Anywhere else inside (a flattened
 * aspheric front, a progressive) the lesser of centre and edge limit holds.
 */
import { directionDeg } from './angle.ts';
import type { HoleLimit, LensRefusal, LensToMake } from './lensToMake.ts';
import { rise, type ThicknessField } from './thicknessField.ts';
import type { PointMm } from './types.ts';

/** What governs the thickness. */
export type GovernedBy = 'centre' | 'edge' | 'hole' | 'blank';

/** One limit at one place: `needMm` is the centre thickness which it asks for. The place from the boxed centre. */
export interface Demand {
  readonly by: 'centre' | 'edge' | 'hole';
  readonly limitMm: number;
  readonly needMm: number;
  readonly at: PointMm;
}

/** The thinnest place of a hole is on its rim or at its middle: the rim is asked at 16 points, then beside the least. */
function holeRise(field: ThicknessField, reference: PointMm, x: number, y: number, radius: number): number {
  const middle = rise(field, x - reference.xMm, y - reference.yMm);
  const onRim = (turn: number) =>
    rise(field, x + radius * Math.cos(turn) - reference.xMm, y + radius * Math.sin(turn) - reference.yMm);
  let at = 0;
  let least = onRim(0);
  for (let k = 1; k < 16; k++) {
    const here = onRim((k * Math.PI) / 8);
    if (here < least) at = (k * Math.PI) / 8;
    // NaN stays, where a surface does not reach.
    least = Math.min(least, here);
  }
  for (let half = Math.PI / 16; half > 0.02; half /= 2) {
    for (const turn of [at - half, at + half]) {
      const here = onRim(turn);
      if (here < least) {
        least = here;
        at = turn;
      }
    }
  }
  return Math.min(middle, least);
}

/** The demand of a hole, NaN where a surface does not reach it. */
export function holeDemand(lens: LensToMake, field: ThicknessField, hole: HoleLimit): Demand {
  const least = holeRise(field, lens.reference, hole.xMm, hole.yMm, hole.diameterMm / 2);
  return {
    by: 'hole',
    limitMm: hole.leastMm,
    needMm: hole.leastMm - least,
    at: { xMm: hole.xMm, yMm: hole.yMm },
  };
}

/** The demand that asks for most; one that is not a number comes first. */
export function strictest(demands: readonly Demand[]): Demand {
  return demands.reduce((a, b) => (Number.isNaN(a.needMm) || b.needMm <= a.needMm ? a : b));
}

/** How far a lens of given thickness stays below a limit. */
export interface Shortfall {
  readonly at: 'centre' | 'edge' | 'hole';
  readonly missingMm: number;
  readonly atDeg: number;
}

/** The limits that a lens of the given thickness misses; empty when it meets them all. */
export function shortfalls(demands: readonly Demand[], thicknessMm: number): Shortfall[] {
  return demands
    .filter((demand) => demand.needMm > thicknessMm + 1e-9)
    .map(({ by, needMm, at }) => ({
      at: by,
      missingMm: needMm - thicknessMm,
      atDeg: directionDeg(at.xMm, at.yMm),
    }));
}

/** Surfaces that cross inside the lens at a given thickness: there is no lens there. Null when there is. */
export function crossingFault(demands: readonly Demand[], thicknessMm: number): LensRefusal | null {
  const left = (demand: Demand) => thicknessMm + demand.limitMm - demand.needMm;
  const worst = demands.reduce((a, b) => (left(b) < left(a) ? b : a));
  if (left(worst) > 0) return null;
  return {
    reason: 'surfaces-cross',
    thinnestMm: left(worst),
    atDeg: directionDeg(worst.at.xMm, worst.at.yMm),
  };
}

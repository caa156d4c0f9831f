/**
 * The finished lens of one eye: surfaces, centre thickness, edge at every radius, volume and mass. The back surface
 * depends on the thickness and the thickness on the back surface: a rough look at a few points comes first, so that
 * one full pass over the edge is nearly always enough. It is repeated until the power is true to 0.0002 D.
 */
import {
  crossingFault,
  type Demand,
  type GovernedBy,
  holeDemand,
  type Shortfall,
  shortfalls,
  strictest,
} from './centreThickness.ts';
import { keptOutline } from './keptOutline.ts';
import { lensFault } from './lensFault.ts';
import type { LensRefusal, LensToMake } from './lensToMake.ts';
import { meanRise } from './lensVolume.ts';
import type { OutlinePoints } from './outline.ts';
import { roughThickness } from './roughThickness.ts';
import { backFor, radiusOfPower } from './surfacePower.ts';
import { reachFault } from './surfaceReach.ts';
import {
  type EdgeExtremes,
  edgeRise,
  profileOn,
  type ThicknessField,
  thicknessField,
} from './thicknessField.ts';
import { interiorDemands } from './thinnestInside.ts';
import type { BackSurface, FrontSurface, PointMm } from './types.ts';

/** A thickness on the edge and its direction from the boxed centre, degrees. */
export interface EdgePlace {
  readonly mm: number;
  readonly atDeg: number;
}

/** A lens as it comes out of the edger. */
export interface FinishedLens {
  readonly front: FrontSurface;
  readonly back: BackSurface;
  /** At the reference point. */
  readonly centreThicknessMm: number;
  readonly governedBy: GovernedBy;
  /** Where the governing limit holds, mm from the boxed centre. */
  readonly governedAt: PointMm;
  /** One for each radius of the outline. */
  readonly edgeMm: readonly number[];
  readonly thickest: EdgePlace;
  readonly thinnest: EdgePlace;
  readonly volumeMm3: number;
  readonly massG: number;
  /** Empty unless the thickness was given. */
  readonly shortfalls: readonly Shortfall[];
}

/** A lens, or why there is none. */
export type FinishResult =
  | { readonly ok: true; readonly lens: FinishedLens }
  | ({ readonly ok: false } & LensRefusal);

/**
 * The finished lens for an order, frame and limits, all lengths in mm. Exact sags throughout; edge thickness to
 * 0.001 mm, volume to 0.1 %. Refuses numbers out of range, surfaces that do not reach the outline, and a given
 * thickness at which the surfaces cross inside it, with figures.
 */
export function finishLens(lens: LensToMake): FinishResult {
  const fault = lensFault(lens);
  if (fault) return { ok: false, ...fault };
  const front = { radiusMm: radiusOfPower(lens.frontPowerD, lens.index), conic: lens.frontConic };
  const shape = keptOutline(lens.outline);
  // A copy of the radii is the cheapest array of as many numbers; each is overwritten.
  const edge = lens.outline.radiiMm.slice();
  const given = lens.fixedCentreThicknessMm;
  const firstBack = backFor(lens, given ?? lens.limits.centreMm);
  const profile = profileOn(front, firstBack, lens.profile, lens.index);
  let thicknessMm = given ?? roughThickness(lens, front, shape, thicknessField(front, firstBack, profile));
  let before: Demand | null = null;
  for (let pass = 0; pass < 20; pass++) {
    const back = backFor(lens, thicknessMm);
    const field = thicknessField(front, back, profile);
    const extremes = edgeRise(field, shape, lens.reference, edge);
    if (extremes === null) return { ok: false, ...reachFault(lens, front, back, shape) };
    const demands = allDemands(lens, field, shape, edge[extremes.least] as number, extremes.least);
    // A demand may come and go with the thickness (an optical centre that crosses the edge): the thicker lens meets all.
    const governing = strictest(before && pass >= 8 ? [...demands, before] : demands);
    if (!Number.isFinite(governing.needMm)) return { ok: false, ...reachFault(lens, front, back, shape) };
    const settled = Math.abs(governing.needMm - thicknessMm) <= closeEnoughMm(lens);
    if (given !== null || settled) {
      const centreThicknessMm = given ?? governing.needMm;
      const crossing = given === null ? null : crossingFault(demands, given);
      if (crossing) return { ok: false, ...crossing };
      return finished({ lens, front, back, field, edge, extremes, centreThicknessMm, demands, governing });
    }
    thicknessMm = governing.needMm;
    before = governing;
  }
  return { ok: false, reason: 'out-of-range', field: 'frontPowerD', found: lens.frontPowerD };
}

/** A change of thickness below this leaves the back vertex power true to 0.0002 D. */
function closeEnoughMm(lens: LensToMake): number {
  return Math.min(0.05, 0.2 / (lens.frontPowerD ** 2 / lens.index + 0.01));
}

function allDemands(
  lens: LensToMake,
  field: ThicknessField,
  shape: OutlinePoints,
  leastRise: number,
  at: number,
): Demand[] {
  const { centreMm, edgeMm } = lens.limits;
  const demands: Demand[] = [
    { by: 'centre', limitMm: centreMm, needMm: centreMm, at: lens.reference },
    {
      by: 'edge',
      limitMm: edgeMm,
      needMm: edgeMm - leastRise,
      at: { xMm: shape.xMm[at] as number, yMm: shape.yMm[at] as number },
    },
  ];
  interiorDemands(lens, field, demands);
  for (const hole of lens.limits.holes) demands.push(holeDemand(lens, field, hole));
  return demands;
}

function finished(parts: {
  readonly lens: LensToMake;
  readonly front: FrontSurface;
  readonly back: BackSurface;
  readonly field: ThicknessField;
  readonly edge: number[];
  readonly extremes: EdgeExtremes;
  readonly centreThicknessMm: number;
  readonly demands: readonly Demand[];
  readonly governing: Demand;
}): FinishResult {
  const { lens, front, back, edge, centreThicknessMm, extremes } = parts;
  const { areaMm2 } = keptOutline(lens.outline);
  const meanMm = centreThicknessMm + meanRise(parts.field, lens.outline.radiiMm, lens.reference, edge);
  const volumeMm3 = areaMm2 * meanMm;
  if (!Number.isFinite(volumeMm3))
    return { ok: false, reason: 'not-a-number', field: 'volume', found: volumeMm3 };
  for (let i = 0; i < edge.length; i++) edge[i] = (edge[i] as number) + centreThicknessMm;
  const place = (i: number) => ({ mm: edge[i] as number, atDeg: (i * 360) / edge.length });
  const given = lens.fixedCentreThicknessMm !== null;
  return {
    ok: true,
    lens: {
      front,
      back,
      centreThicknessMm,
      governedBy: given ? 'blank' : parts.governing.by,
      governedAt: given ? lens.reference : parts.governing.at,
      edgeMm: edge,
      thickest: place(extremes.most),
      thinnest: place(extremes.least),
      volumeMm3,
      massG: (volumeMm3 / 1000) * lens.densityGPerCm3,
      shortfalls: given ? shortfalls(parts.demands, centreThicknessMm) : [],
    },
  };
}

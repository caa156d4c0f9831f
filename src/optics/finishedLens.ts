/**
 * The finished lens of one eye: surfaces, centre thickness, edge at every radius, volume and mass. The back surface
 * depends on the thickness and the thickness on the back surface: a rough look at a few points comes first, so that
 * one full pass over the edge is nearly always enough. It is repeated until the power is true to 0.0002 D.
 */
import { type Demand, type GovernedBy, holeDemands, interiorDemands } from './centreThickness.ts';
import { type LensRefusal, type LensToMake, lensFault } from './lensToMake.ts';
import { meanRise } from './lensVolume.ts';
import { keptPoints, type OutlinePoints } from './outline.ts';
import { roughThickness } from './roughThickness.ts';
import { backFor, radiusOfPower } from './surfacePower.ts';
import { reachFault } from './surfaceReach.ts';
import { edgeRise, type ThicknessField, thicknessField } from './thicknessField.ts';
import type { BackSurface, FrontSurface, PointMm } from './types.ts';

/** A thickness on the edge and its direction from the boxed centre, degrees. */
export interface EdgePlace {
  readonly mm: number;
  readonly atDeg: number;
}

/** How far a lens of given thickness stays below a limit. */
export interface Shortfall {
  readonly at: 'centre' | 'edge' | 'hole';
  readonly missingMm: number;
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
  readonly edgeMm: Float64Array;
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

/** A change of thickness below this leaves the back vertex power true to 0.0002 D. */
function closeEnoughMm(lens: LensToMake): number {
  return Math.min(0.05, 0.2 / (lens.frontPowerD ** 2 / lens.index + 0.01));
}

const worst = (demands: readonly Demand[]): Demand => demands.reduce((a, b) => (b.needMm > a.needMm ? b : a));

/**
 * The finished lens for an order, frame and limits, all lengths in mm. Exact sags throughout; edge thickness to
 * 0.001 mm, volume to 0.1 %. Refuses numbers out of range and surfaces that do not reach the outline, with figures.
 */
export function finishLens(lens: LensToMake): FinishResult {
  const fault = lensFault(lens);
  if (fault) return { ok: false, ...fault };
  const front = { radiusMm: radiusOfPower(lens.frontPowerD, lens.index), conic: lens.frontConic };
  const shape = keptPoints(lens.outline);
  const edge = new Float64Array(shape.xMm.length);
  const enough = closeEnoughMm(lens);
  let thicknessMm = lens.fixedCentreThicknessMm ?? roughThickness(lens, front, shape);
  for (let pass = 0; pass < 20; pass++) {
    const back = backFor(lens, thicknessMm);
    const field = thicknessField(front, back, lens.profile, lens.index);
    const thinnest = edgeRise(field, shape.xMm, shape.yMm, lens.reference, edge);
    if (thinnest < 0) return { ok: false, ...reachFault(lens, front, back, shape) };
    const demands = allDemands(lens, field, shape, edge, thinnest);
    const governing = worst(demands);
    if (!Number.isFinite(governing.needMm)) return { ok: false, ...reachFault(lens, front, back, shape) };
    if (lens.fixedCentreThicknessMm !== null)
      return finished({ lens, front, back, field, edge, thicknessMm, demands, governing: null });
    if (Math.abs(governing.needMm - thicknessMm) <= enough)
      return finished({ lens, front, back, field, edge, thicknessMm: governing.needMm, demands, governing });
    thicknessMm = governing.needMm;
  }
  return { ok: false, reason: 'out-of-range', field: 'frontPowerD', found: lens.frontPowerD };
}

function allDemands(
  lens: LensToMake,
  field: ThicknessField,
  shape: OutlinePoints,
  edge: Float64Array,
  thinnest: number,
): Demand[] {
  return [
    { by: 'centre', needMm: lens.limits.centreMm, at: lens.reference },
    {
      by: 'edge',
      needMm: lens.limits.edgeMm - (edge[thinnest] as number),
      at: { xMm: shape.xMm[thinnest] as number, yMm: shape.yMm[thinnest] as number },
    },
    ...interiorDemands(lens, field),
    ...holeDemands(lens, field),
  ];
}

function finished(parts: {
  readonly lens: LensToMake;
  readonly front: FrontSurface;
  readonly back: BackSurface;
  readonly field: ThicknessField;
  readonly edge: Float64Array;
  readonly thicknessMm: number;
  readonly demands: readonly Demand[];
  readonly governing: Demand | null;
}): FinishResult {
  const { lens, front, back, field, edge, thicknessMm, demands, governing } = parts;
  const { meanMm, areaMm2 } = meanRise(field, lens.outline.radiiMm, lens.reference, edge);
  let thin = 0;
  let thick = 0;
  for (let i = 0; i < edge.length; i++) {
    const mm = (edge[i] as number) + thicknessMm;
    edge[i] = mm;
    if (mm < (edge[thin] as number)) thin = i;
    if (mm > (edge[thick] as number)) thick = i;
  }
  const volumeMm3 = areaMm2 * (thicknessMm + meanMm);
  if (!Number.isFinite(volumeMm3))
    return { ok: false, reason: 'not-a-number', field: 'volume', found: volumeMm3 };
  const place = (i: number) => ({ mm: edge[i] as number, atDeg: (i * 360) / edge.length });
  return {
    ok: true,
    lens: {
      front,
      back,
      centreThicknessMm: thicknessMm,
      governedBy: governing ? governing.by : 'blank',
      governedAt: governing ? governing.at : lens.reference,
      edgeMm: edge,
      thickest: place(thick),
      thinnest: place(thin),
      volumeMm3,
      massG: (volumeMm3 / 1000) * lens.densityGPerCm3,
      shortfalls: governing ? [] : shortfalls(demands, thicknessMm),
    },
  };
}

function shortfalls(demands: readonly Demand[], thicknessMm: number): Shortfall[] {
  return demands
    .filter((demand) => demand.needMm > thicknessMm + 1e-9)
    .map(({ by, needMm, at }) => ({
      at: by,
      missingMm: needMm - thicknessMm,
      atDeg: ((Math.atan2(at.yMm, at.xMm) * 180) / Math.PI + 360) % 360,
    }));
}

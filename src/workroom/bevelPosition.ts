/**
 * Where to run the bevel so that the rim hides most of the edge. The apex sits in the middle of the rim's depth. A
 * bevel on the curve of the rim goes in without strain and is taken where the edge holds it; else it keeps a share of
 * the edge. Of equal positions the one that shows least in front is better: the rest is hidden behind the rim.
 */
import type { CutHabits } from '../catalogue/workroom.ts';
import { type Bevel, type BevelPlacement, placeBevel } from '../optics/bevel.ts';
import { radiusOfPower } from '../optics/surfacePower.ts';
import { truePowerD } from '../optics/toolIndex.ts';
import type { EdgeAllRound } from './workedLens.ts';

export interface BevelPosition {
  readonly bevel: Bevel;
  readonly placement: BevelPlacement;
  /** Mean share of the edge in front of the apex, percent. */
  readonly meanPercent: number;
  /** Share of the whole edge that the rim covers, percent. */
  readonly hiddenPercent: number;
}

/** Shares of the edge that are tried, from the front. */
const SHARES = Array.from({ length: 17 }, (_, i) => 0.1 + i * 0.05);

/** Where the apex usually goes when nothing speaks for another place (common practice). */
const USUAL_SHARE = 0.4;

/** The best position of the bevel; null where the depth of the rim is not known. `frameCurveD` at tool index. */
export function bevelPosition(
  edge: EdgeAllRound,
  cut: CutHabits,
  rimDepthMm: number,
  frameCurveD: number | null,
): BevelPosition | null {
  if (!(rimDepthMm > 0)) return null;
  const rim = { depthMm: rimDepthMm, grooveFromFrontMm: rimDepthMm / 2 };
  const curved = frameCurveD !== null && frameCurveD > 0;
  const curveRadiusMm = curved ? curveRadius(frameCurveD) : Number.POSITIVE_INFINITY;
  const form = { heightMm: cut.bevelHeightMm, angleDeg: cut.bevelAngleDeg, curveRadiusMm };
  const ways = curved ? (['curve', 'share'] as const) : (['share'] as const);
  let best: { readonly position: BevelPosition; readonly rank: readonly number[] } | null = null;
  for (const follows of ways) {
    for (const shareFromFront of SHARES) {
      const bevel: Bevel = { ...form, follows, shareFromFront };
      const placement = placeBevel(edge, bevel, rim);
      if (placement === null) continue;
      const position = { bevel, placement, ...shares(edge, placement) };
      const rank = rankOf(position, follows);
      if (best === null || isBefore(rank, best.rank)) best = { position, rank };
    }
  }
  return best?.position ?? null;
}

/** Radius of a curve that reads `readingD` at the tool index, mm: it is the same whatever index it is worked in. */
function curveRadius(readingD: number): number {
  const anyIndex = 1.5;
  return radiusOfPower(truePowerD(readingD, anyIndex), anyIndex);
}

function shares({ edgeMm }: EdgeAllRound, { apexFromFrontMm, inFrontMm, behindMm }: BevelPlacement) {
  const sum = (list: readonly number[]) => list.reduce((total, mm) => total + mm, 0);
  const whole = sum(edgeMm);
  return {
    meanPercent: Math.round((100 * sum(apexFromFrontMm)) / whole),
    hiddenPercent: Math.round(100 * (1 - (sum(inFrontMm) + sum(behindMm)) / whole)),
  };
}

/** Lower is better, the first figure that differs decides; lengths to 0.05 mm, which is what the bench can hold. */
function rankOf({ placement, bevel }: BevelPosition, follows: Bevel['follows']): readonly number[] {
  const { tooThin, mostInFront, inFrontMm, behindMm } = placement;
  const coarse = (mm: number) => Math.round(mm * 20);
  const n = inFrontMm.length;
  const most = Math.max(...inFrontMm.map((mm, i) => mm + (behindMm[i] as number)));
  const mean = inFrontMm.reduce((total, mm, i) => total + mm + (behindMm[i] as number), 0) / n;
  return [
    tooThin === null ? 0 : coarse(tooThin.missingMm),
    follows === 'curve' ? 0 : 1,
    coarse(mean),
    coarse(most),
    coarse(mostInFront.mm),
    Math.abs(bevel.shareFromFront - USUAL_SHARE),
  ];
}

function isBefore(one: readonly number[], other: readonly number[]): boolean {
  const at = one.findIndex((value, i) => value !== other[i]);
  return at >= 0 && (one[at] as number) < (other[at] as number);
}

/** Where the centre, cross and segment of each lens go in the outline: boxing (ISO 8624) and the shop's habits. */
import type { Design, Use } from '../catalogue/design.ts';
import type { ShopHabits } from '../catalogue/shop.ts';
import { nasalSign } from '../optics/prismBase.ts';
import type { Eye, PointMm } from '../optics/types.ts';
import { round2 } from '../rules/round.ts';
import type { FrameSituation } from '../rules/situation.ts';
import type { BothEyes, FitRequest } from './request.ts';

/** Centre of rotation behind the back vertex plus the vertex distance stand in the convergence formula, mm. */
const ROTATION_BEHIND_LENS_MM = 27;

export interface Placement {
  /** Distance from the middle of the bridge that this lens is centred for, mm. */
  readonly pdMm: number | null;
  readonly fittingHeightMm: number | null;
  readonly segmentHeightMm: number | null;
  readonly reference: PointMm | null;
  readonly cross: PointMm | null;
}

/** Monocular PDs of what was measured, mm; one number is halved. */
export const monocular = (pd: number | BothEyes | undefined): BothEyes | null =>
  pd === undefined ? null : typeof pd === 'number' ? { right: pd / 2, left: pd / 2 } : pd;

/** Where one lens is centred; parts that wait for a measurement are null. */
export function placeLens(
  eye: Eye,
  frame: FrameSituation,
  fit: FitRequest,
  lenses: { readonly use: Use; readonly design: Design },
  distancePowerD: number,
  habits: ShopHabits,
): Placement {
  const { use, design } = lenses;
  const pdMm = use === 'none' ? (frame.aMm + frame.dblMm) / 2 : pdFor(eye, fit, use, distancePowerD, habits);
  const fittingHeightMm = fit.fittingHeight?.[eye] ?? null;
  const segmentHeightMm = fit.segmentHeight?.[eye] ?? null;
  const known = { pdMm, fittingHeightMm, segmentHeightMm, cross: null };
  if (pdMm === null) return { ...known, reference: null };
  const xMm = nasalSign(eye) * round2((frame.aMm + frame.dblMm) / 2 - pdMm);
  const fromBottom = (heightMm: number) => round2(heightMm - frame.bMm / 2);
  if (design.corridor !== null) {
    if (fittingHeightMm === null) return { ...known, reference: null };
    const yMm = fromBottom(fittingHeightMm);
    const reference = { xMm, yMm: round2(yMm - design.corridor.referenceBelowCrossMm) };
    return { ...known, cross: { xMm, yMm }, reference };
  }
  if (design.segment !== null) {
    if (segmentHeightMm === null) return { ...known, reference: null };
    return {
      ...known,
      reference: { xMm, yMm: round2(fromBottom(segmentHeightMm) + design.segment.blankDropMm) },
    };
  }
  return {
    ...known,
    reference: { xMm, yMm: singleVisionHeight(use, fit, fittingHeightMm, fromBottom, habits) },
  };
}

function singleVisionHeight(
  use: Use,
  fit: FitRequest,
  fittingHeightMm: number | null,
  fromBottom: (heightMm: number) => number,
  habits: ShopHabits,
): number {
  if (use === 'none') return 0;
  if (fittingHeightMm === null) return habits.datumAboveCentreMm;
  const tiltDeg = fit.pantoscopicTilt ?? habits.pantoscopicTiltDeg;
  const loweredMm = habits.singleVisionHeight === 'lowered-for-tilt' ? tiltDeg / 2 : 0;
  return fromBottom(fittingHeightMm - loweredMm);
}

function pdFor(
  eye: Eye,
  fit: FitRequest,
  use: Use,
  distancePowerD: number,
  habits: ShopHabits,
): number | null {
  const distance = monocular(fit.pd);
  if (use !== 'near') return distance?.[eye] ?? null;
  const near = monocular(fit.nearPd);
  if (near !== null) return near[eye];
  return distance === null ? null : round2(nearPdMm(distance[eye], distancePowerD, habits));
}

/**
 * Monocular near centration distance by the geometry of convergence, mm: `CD / (1 + s / (W (1 - s F / 1000)))` in the
 * form `CD - CD / (1 + W (1 / s - F / 1000))`, W the working distance and s the centre of rotation from the lens.
 */
function nearPdMm(pdMm: number, powerD: number, habits: ShopHabits): number {
  const bend = 1 / ROTATION_BEHIND_LENS_MM - powerD / 1000;
  return pdMm - pdMm / (1 + habits.nearDistanceMm * bend);
}

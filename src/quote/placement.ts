/** Where the centre, cross and segment of each lens go in the outline: boxing (ISO 8624) and the shop's habits. */
import type { Design, Use } from '../catalogue/design.ts';
import type { ShopHabits } from '../catalogue/shop.ts';
import { nearCentrationMm } from '../optics/nearCentration.ts';
import { nasalSign } from '../optics/prismBase.ts';
import { CENTRE_OF_ROTATION_MM } from '../optics/sharpView.ts';
import type { Eye, PointMm } from '../optics/types.ts';
import { round2 } from '../rules/round.ts';
import { tiltToSightDeg } from '../rules/sharpAngle.ts';
import type { FrameSituation } from '../rules/situation.ts';
import type { BothEyes, FitRequest } from './request.ts';

export interface Placement {
  /** Distance from the middle of the bridge that this lens is centred for, mm. */
  readonly pdMm: number | null;
  readonly fittingHeightMm: number | null;
  readonly segmentHeightMm: number | null;
  readonly reference: PointMm | null;
  readonly cross: PointMm | null;
  /** How far the near zone or segment lies inwards of the distance centre, mm. */
  readonly nearInsetMm: number;
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
  const nearInsetMm = insetFor(eye, fit, design, distancePowerD, habits);
  const known = { pdMm, fittingHeightMm, segmentHeightMm, cross: null, nearInsetMm };
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
  return distance === null
    ? null
    : round2(nearCentrationMm(distance[eye], nearSight(distancePowerD, habits)));
}

/** Tilt of a single vision lens to the line of sight, degrees. */
export const opticalTiltDeg = (fit: FitRequest, habits: ShopHabits): number =>
  tiltToSightDeg(fit.pantoscopicTilt ?? habits.pantoscopicTiltDeg, habits);

/** Inset of a near zone or segment, mm: from the near PD, else the design's, else the geometry of convergence. */
function insetFor(
  eye: Eye,
  fit: FitRequest,
  design: Design,
  distancePowerD: number,
  habits: ShopHabits,
): number {
  if (design.corridor === null && design.segment === null) return 0;
  const distance = monocular(fit.pd)?.[eye] ?? null;
  const near = monocular(fit.nearPd)?.[eye] ?? null;
  if (distance !== null && near !== null) return round2(distance - near);
  const declared = design.corridor?.nearInsetMm ?? null;
  if (declared !== null || distance === null) return declared ?? 0;
  return round2(distance - nearCentrationMm(distance, nearSight(distancePowerD, habits)));
}

const nearSight = (powerD: number, habits: ShopHabits) => ({
  workingMm: habits.nearDistanceMm,
  rotationMm: CENTRE_OF_ROTATION_MM,
  powerD,
});

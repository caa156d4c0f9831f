/**
 * The thickness of a lens over its face, less its centre thickness: `rise(x, y) = zBack - zFront` at a point in mm
 * from the reference point, both vertices taken at 0. Thickness is along z, the normal of the front at the
 * reference point (design: "thickness is along the axis there").
 */
import type { OutlinePoints } from './outline.ts';
import { type PowerProfile, type PreparedProfile, prepareProfile, profileSag } from './powerProfile.ts';
import { conicSag, type PreparedBack, prepareBack, preparedBackSag } from './surface.ts';
import type { BackSurface, FrontSurface, PointMm } from './types.ts';

/** Both surfaces as plain numbers. */
export interface ThicknessField {
  readonly frontCurvature: number;
  readonly frontConic: number;
  readonly back: PreparedBack;
  readonly profile: PreparedProfile | null;
}

/** Makes the field of a lens ready for many points; `profile` is prepared by `profileOn`. */
export function thicknessField(
  front: FrontSurface,
  back: BackSurface,
  profile: PreparedProfile | null,
): ThicknessField {
  return {
    frontCurvature: 1 / front.radiusMm,
    frontConic: front.conic,
    back: prepareBack(back),
    profile,
  };
}

/**
 * The profile of a lens on its surface, or null. On the back it is laid on the mean curvature, which a small change
 * of thickness does not move enough to matter: one preparation serves a whole lens.
 */
export function profileOn(
  front: FrontSurface,
  back: BackSurface,
  profile: PowerProfile | null,
  index: number,
): PreparedProfile | null {
  if (profile === null) return null;
  const backCurvature = (1 / back.generatingRadiusMm + 1 / back.revolvedRadiusMm) / 2;
  return prepareProfile(profile, profile.surface === 'front' ? 1 / front.radiusMm : backCurvature, index);
}

/** zBack - zFront at a point from the reference point, mm; NaN where a surface does not reach. */
export function rise(field: ThicknessField, x: number, y: number): number {
  const z =
    preparedBackSag(field.back, x, y) - conicSag(field.frontCurvature, field.frontConic, x * x + y * y);
  const { profile } = field;
  if (profile === null) return z;
  const extra = profileSag(profile, x, y);
  return profile.profile.surface === 'front' ? z - extra : z + extra;
}

/** Where on the edge the rise is least and most. */
export interface EdgeExtremes {
  readonly least: number;
  readonly most: number;
}

/** The rise at each outline point into `out`; gives the indices of the extremes, or null when some rise is NaN. */
export function edgeRise(
  field: ThicknessField,
  shape: OutlinePoints,
  reference: PointMm,
  out: number[],
): EdgeExtremes | null {
  const { quick, axes } = field.back;
  if (quick && axes === null && field.profile === null) return plainEdgeRise(field, shape, reference, out);
  const { xMm, yMm } = shape;
  let least = 0;
  let most = 0;
  for (let i = 0; i < xMm.length; i++) {
    const d = rise(field, (xMm[i] as number) - reference.xMm, (yMm[i] as number) - reference.yMm);
    if (Number.isNaN(d)) return null;
    out[i] = d;
    if (d < (out[least] as number)) least = i;
    if (d > (out[most] as number)) most = i;
  }
  return { least, most };
}

/** `edgeRise` of an untilted back without profile, its numbers held by the loop: most lenses, in two thirds the time. */
function plainEdgeRise(
  field: ThicknessField,
  shape: OutlinePoints,
  reference: PointMm,
  out: number[],
): EdgeExtremes | null {
  const { xMm, yMm } = shape;
  const { cos, sin, generatingRadius: g, revolvedRadius: r } = field.back;
  const c = field.frontCurvature;
  const flattening = (1 + field.frontConic) * c * c;
  const signG = g > 0 ? 1 : -1;
  const signR = r > 0 ? 1 : -1;
  const ox = reference.xMm;
  const oy = reference.yMm;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  let least = 0;
  let most = 0;
  let sum = 0;
  for (let i = 0; i < xMm.length; i++) {
    const x = (xMm[i] as number) - ox;
    const y = (yMm[i] as number) - oy;
    const u = cos * x + sin * y;
    const v = cos * y - sin * x;
    const r2 = x * x + y * y;
    const arm = r - g + signG * Math.sqrt(g * g - u * u);
    const d = r - signR * Math.sqrt(arm * arm - v * v) - (c * r2) / (1 + Math.sqrt(1 - flattening * r2));
    out[i] = d;
    sum += d;
    if (d < low) {
      low = d;
      least = i;
    }
    if (d > high) {
      high = d;
      most = i;
    }
  }
  return Number.isNaN(sum) ? null : { least, most };
}

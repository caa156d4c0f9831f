/**
 * What the finished lens is computed from, and the inspection of it before any sag is asked: a number that is not
 * finite or cannot be is an explained refusal.
 */
import { keptOutline } from './keptOutline.ts';
import type { PowerProfile } from './powerProfile.ts';
import type { Outline, PointMm, PrismVector, SpheroCylinder } from './types.ts';

/** A drilled hole and the least thickness there; the place from the boxed centre, mm. */
export interface HoleLimit {
  readonly xMm: number;
  readonly yMm: number;
  readonly diameterMm: number;
  readonly leastMm: number;
}

/** Least thicknesses, mm. */
export interface ThicknessLimits {
  /** At the reference point, and at the thinnest place inside a minus lens with prism (its optical centre). */
  readonly centreMm: number;
  /** At every point of the edge: full rim or groove, whichever applies. */
  readonly edgeMm: number;
  readonly holes: readonly HoleLimit[];
}

/** One eye's lens as ordered, for its frame. */
export interface LensToMake {
  /** Back vertex power at the reference point. */
  readonly power: SpheroCylinder;
  /** Prism at the reference point, thinning prism included. */
  readonly prism: PrismVector;
  /** Refractive index of the wavelength in which the powers are meant. */
  readonly index: number;
  readonly densityGPerCm3: number;
  /** True power of the front surface in this index, D. */
  readonly frontPowerD: number;
  /** Conic constant of the front; 0 for a sphere. */
  readonly frontConic: number;
  /** Finished shape of this eye, from the boxed centre. */
  readonly outline: Outline;
  /** Optical centre or prism reference point, mm from the boxed centre. */
  readonly reference: PointMm;
  readonly limits: ThicknessLimits;
  /** Thickness of a stock blank, mm; limits are then checked and shortfalls reported. Null: solved. */
  readonly fixedCentreThicknessMm: number | null;
  /** Progressive or office profile; null for single vision (and for bifocals, whose segment adds no limit). */
  readonly profile: PowerProfile | null;
}

/** Why a lens cannot be computed. Figures are in the units of the field that is named. */
export type LensRefusal =
  | { readonly reason: 'not-a-number' | 'out-of-range'; readonly field: string; readonly found: number }
  | {
      /** A surface turns away from the axis before it reaches the edge of the lens. */
      readonly reason: 'front-does-not-reach' | 'back-does-not-reach';
      /** Reach of the surface from the reference point, mm, at its tightest. */
      readonly reachMm: number;
      /** What the outline needs, mm from the reference point. */
      readonly neededMm: number;
      /** Direction of the outline's farthest point from the boxed centre, degrees. */
      readonly atDeg: number;
    }
  /** At the given thickness the surfaces cross before the edge: what is left there, mm (0 or less), and where. */
  | { readonly reason: 'surfaces-cross'; readonly thinnestMm: number; readonly atDeg: number };

/** Null when the number is finite and in range, ends included. */
function outside(field: string, found: number, least: number, most: number): LensRefusal | null {
  if (found >= least && found <= most) return null;
  return { reason: Number.isFinite(found) ? 'out-of-range' : 'not-a-number', field, found };
}

/** The first thing wrong with the numbers of a lens, or null. */
export function lensFault(lens: LensToMake): LensRefusal | null {
  const { power, prism, reference, limits, outline } = lens;
  return (
    outside('power.sphereD', power.sphereD, -60, 60) ??
    outside('power.cylinderD', power.cylinderD, -30, 30) ??
    outside('power.axisDeg', power.axisDeg, -360, 360) ??
    outside('prism.x', prism.x, -60, 60) ??
    outside('prism.y', prism.y, -60, 60) ??
    outside('index', lens.index, 1.3, 2.5) ??
    outside('densityGPerCm3', lens.densityGPerCm3, 0.1, 10) ??
    outside('frontPowerD', lens.frontPowerD, -40, 40) ??
    outside('frontConic', lens.frontConic, -1000, 1000) ??
    outside('reference.xMm', reference.xMm, -100, 100) ??
    outside('reference.yMm', reference.yMm, -100, 100) ??
    outside('limits.centreMm', limits.centreMm, 0, 50) ??
    outside('limits.edgeMm', limits.edgeMm, 0, 50) ??
    outside('fixedCentreThicknessMm', lens.fixedCentreThicknessMm ?? 1, 0.01, 50) ??
    outside('outline.radiiMm.length', outline.radiiMm.length, 36, 100_000) ??
    radiusFault(outline) ??
    (limits.holes.length > 0 ? holeFault(limits.holes) : null) ??
    (lens.profile ? profileFault(lens.profile) : null)
  );
}

function radiusFault(outline: Outline): LensRefusal | null {
  const { impossibleAt } = keptOutline(outline);
  return impossibleAt < 0
    ? null
    : outside(`outline.radiiMm.${impossibleAt}`, outline.radiiMm[impossibleAt] as number, 0.5, 100);
}

function holeFault(holes: readonly HoleLimit[]): LensRefusal | null {
  for (const [i, hole] of holes.entries()) {
    const fault =
      outside(`limits.holes.${i}.xMm`, hole.xMm, -100, 100) ??
      outside(`limits.holes.${i}.yMm`, hole.yMm, -100, 100) ??
      outside(`limits.holes.${i}.diameterMm`, hole.diameterMm, 0, 20) ??
      outside(`limits.holes.${i}.leastMm`, hole.leastMm, 0, 50);
    if (fault) return fault;
  }
  return null;
}

function profileFault(profile: PowerProfile): LensRefusal | null {
  return (
    outside('profile.addD', profile.addD, -6, 6) ??
    outside('profile.insetXMm', profile.insetXMm, -20, 20) ??
    outside('profile.startYMm', profile.startYMm, -50, 50) ??
    outside('profile.endYMm', profile.endYMm, -60, profile.startYMm - 1)
  );
}

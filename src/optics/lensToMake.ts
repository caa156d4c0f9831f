/**
 * What the finished lens is computed from, and the inspection of it before any sag is asked: a number that is not
 * finite or cannot be is an explained refusal.
 */
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
    };

function fields(lens: LensToMake): [string, number, number, number][] {
  const { power, prism, reference, limits, profile } = lens;
  const list: [string, number, number, number][] = [
    ['power.sphereD', power.sphereD, -60, 60],
    ['power.cylinderD', power.cylinderD, -30, 30],
    ['power.axisDeg', power.axisDeg, -360, 360],
    ['prism.x', prism.x, -60, 60],
    ['prism.y', prism.y, -60, 60],
    ['index', lens.index, 1.3, 2.5],
    ['densityGPerCm3', lens.densityGPerCm3, 0.1, 10],
    ['frontPowerD', lens.frontPowerD, -40, 40],
    ['frontConic', lens.frontConic, -1000, 1000],
    ['reference.xMm', reference.xMm, -100, 100],
    ['reference.yMm', reference.yMm, -100, 100],
    ['limits.centreMm', limits.centreMm, 0, 50],
    ['limits.edgeMm', limits.edgeMm, 0, 50],
    ['outline.radiiMm.length', lens.outline.radiiMm.length, 36, 100_000],
  ];
  if (lens.fixedCentreThicknessMm !== null)
    list.push(['fixedCentreThicknessMm', lens.fixedCentreThicknessMm, 0.01, 50]);
  limits.holes.forEach((hole, i) => {
    list.push([`limits.holes.${i}.xMm`, hole.xMm, -100, 100], [`limits.holes.${i}.yMm`, hole.yMm, -100, 100]);
    list.push([`limits.holes.${i}.diameterMm`, hole.diameterMm, 0, 20]);
    list.push([`limits.holes.${i}.leastMm`, hole.leastMm, 0, 50]);
  });
  if (profile) {
    list.push(['profile.addD', profile.addD, -6, 6], ['profile.insetXMm', profile.insetXMm, -20, 20]);
    list.push(['profile.startYMm', profile.startYMm, -50, 50]);
    list.push(['profile.endYMm', profile.endYMm, -60, profile.startYMm - 1]);
  }
  return list;
}

/** The first thing wrong with the numbers of a lens, or null. */
export function lensFault(lens: LensToMake): LensRefusal | null {
  for (const [field, found, least, most] of fields(lens)) {
    if (!Number.isFinite(found)) return { reason: 'not-a-number', field, found };
    if (found < least || found > most) return { reason: 'out-of-range', field, found };
  }
  const { radiiMm } = lens.outline;
  for (let i = 0; i < radiiMm.length; i++) {
    const found = radiiMm[i] as number;
    if (!(found > 0.5 && found < 100))
      return { reason: 'out-of-range', field: `outline.radiiMm.${i}`, found };
  }
  return null;
}

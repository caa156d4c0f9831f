/** What the finished lens is computed from, and why it may be refused. */
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
      /** What the outline and the holes need, mm from the reference point. */
      readonly neededMm: number;
      /** Direction of that farthest place from the boxed centre, degrees. */
      readonly atDeg: number;
    }
  /** At the given thickness the surfaces cross before the edge: what is left there, mm (0 or less), and where. */
  | { readonly reason: 'surfaces-cross'; readonly thinnestMm: number; readonly atDeg: number };

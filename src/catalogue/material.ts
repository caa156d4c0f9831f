import type { RangeD } from './design.ts';
import type { MountingKind } from './frame.ts';
import type { OptionText, Surcharge } from './limit.ts';

/** A base curve that the material is made in. */
export interface BaseCurve {
  /** True surface power of the front for this material's ne, D. */
  readonly powerD: number;
  /** Conic constant of the front; null: not known, taken as spherical and said so. */
  readonly conic: number | null;
}

/** Ready-made lenses of one power each, cut and fitted as they are. */
export interface StockBlanks {
  readonly id: string;
  readonly diameterMm: number;
  readonly sphereD: RangeD;
  /** Largest minus cylinder in absolute value, D. */
  readonly cylinderD: number;
  /** Step of the grid, D. */
  readonly stepD: number;
  /** By spherical equivalent, ascending: base curve and centre thickness up to and with `toD`. */
  readonly forms: readonly {
    readonly toD: number;
    readonly baseCurveD: number;
    readonly centreThicknessMm: number;
  }[];
  /** Coatings that these lenses come with; no other can be had on them. */
  readonly coatings: readonly string[];
  /** Tints that can be had on them. */
  readonly tints: readonly string[];
  /** Minor units a pair: replaces the price of design and material together. */
  readonly priceMinor: number;
}

/** Blanks whose back is made to order. */
export interface SurfacedBlanks {
  readonly diametersMm: readonly number[];
  /** Where the reference point lies from the blank's middle: in towards the nose and up, mm. */
  readonly referenceInMm: number;
  readonly referenceUpMm: number;
  /** How far the optical centre of single vision may be moved from the middle of the blank, mm. */
  readonly mostMoveMm: number;
  readonly baseCurves: readonly BaseCurve[];
}

export interface Material extends OptionText {
  /** Refractive index at 587.56 nm. */
  readonly nd: number;
  /** Refractive index at 546.07 nm. */
  readonly ne: number;
  readonly abbe: number;
  readonly densityGPerCm3: number;
  /** Longest wavelength that is stopped, nm. */
  readonly uvCutOffNm: number;
  readonly leastMm: {
    readonly centre: number;
    readonly edge: number;
    /** At the groove of a grooved lens; null: not grooved. */
    readonly groove: number | null;
    /** At the hole of a drilled lens; null: not drilled. */
    readonly hole: number | null;
  };
  /** Mountings that the workroom makes in it. */
  readonly mountings: readonly MountingKind[];
  /** Impact resistant enough for children and one-eyed wearers in this shop. */
  readonly impactResistant: boolean;
  /** Always leaves the maker with a hard coat. */
  readonly alwaysHardCoated: boolean;
  /** Strongest meridian that it is made in, D. */
  readonly powerD: RangeD;
  readonly stock: readonly StockBlanks[];
  readonly surfaced: SurfacedBlanks | null;
  readonly surcharges: readonly Surcharge[];
}

import type { OptionText, Surcharge } from './limit.ts';

export const USES = ['distance', 'intermediate', 'near', 'all', 'none'] as const;
/** What the lenses are for. `all`: distance with a near part; `none`: no power. */
export type Use = (typeof USES)[number];

export const DESIGN_KINDS = ['single-vision', 'progressive', 'office', 'bifocal', 'plano'] as const;
export type DesignKind = (typeof DESIGN_KINDS)[number];

/** Inclusive, D. */
export interface RangeD {
  readonly from: number;
  readonly to: number;
}

/** Segment of a bifocal. */
export interface Segment {
  readonly widthMm: number;
  /** Top to bottom of the whole segment, mm. */
  readonly depthMm: number;
  /** Segment top to the segment's own optical centre, mm. */
  readonly centreBelowTopMm: number;
  /** Least segment height that is fitted, mm. */
  readonly leastHeightMm: number;
  /** How far the segment's top lies below the blank's reference point, mm; and how far in. */
  readonly blankDropMm: number;
  readonly blankInsetMm: number;
}

/** Corridor of a progressive or office design. */
export interface Corridor {
  /** Fitting cross to where the add (or its declared share) is reached, mm. */
  readonly lengthMm: number;
  /** How the maker defines the length: kept with its number. */
  readonly definition: string;
  /** Declared least fitting height, mm; it governs. Null: corridor + 4 mm. */
  readonly leastFittingHeightMm: number | null;
  /** Least depth of lens above the fitting cross, mm. */
  readonly leastAboveCrossMm: number;
  /** Prism reference point below the fitting cross, mm. */
  readonly referenceBelowCrossMm: number;
  /** Horizontal inset of the near zone, mm; null: from the geometry of convergence. */
  readonly nearInsetMm: number | null;
  /** Share of the add as thinning prism, base down in both eyes (2/3 is usual, 0 none). */
  readonly thinningPrismShare: number;
  /** Share of the add at the fitting cross: 0 for a progressive; an office design has some already. */
  readonly addShareAtCross: number;
}

export interface Design extends OptionText {
  readonly kind: DesignKind;
  readonly uses: readonly Use[];
  /** Ids of the materials it is made in; with tints and coatings narrowed by their own lists. */
  readonly materials: readonly string[];
  readonly sphereD: RangeD;
  /** Largest cylinder in absolute value, D. */
  readonly cylinderD: number;
  /** Adds; null where the design has none. */
  readonly addD: RangeD | null;
  /** Largest ordered prism an eye, prism dioptres. */
  readonly prism: number;
  /** Largest face form that the design allows, degrees. */
  readonly faceFormDeg: number;
  readonly corridor: Corridor | null;
  readonly segment: Segment | null;
  readonly surcharges: readonly Surcharge[];
}

/**
 * The shape of a tolerance table: data alone, with the edges of its bands and where its figures come from.
 *
 * A table "from memory" never decides a pair by default (see inspect.ts).
 */

/** Where figures come from: the text was seen; remembered and to be verified; the shop's own. */
export type Basis = 'text seen' | 'from memory' | 'shop';

/** Unit of a limit. `%` is a share of the ordered value that chose the band. */
export type LimitUnit = 'D' | '%' | 'degrees' | 'mm' | 'prism dioptres';

/** One band: it holds from the edge before it up to `upTo`, that edge included unless said otherwise. */
export interface Band {
  readonly upTo: number;
  /** Whether a value at `upTo` itself belongs to this band; true when left out. */
  readonly including?: boolean;
  /** Plus or minus; null where the standard holds no limit. */
  readonly limit: number | null;
  readonly unit: LimitUnit;
}

/** Which meridians of the order a power limit is for. */
export type PowerMeridians = 'strongest' | 'each' | 'sphere';

/** Limits on mounted prism against the order, in one direction, both eyes together. */
export interface PrismTolerance {
  /** By the larger prism ordered in this direction in either eye, prism dioptres. */
  readonly byOrderedPrism: readonly Band[];
  /** Beyond this power in that meridian (of the stronger lens, D) the place of the reference points is limited. */
  readonly strongOverD: number;
  /** mm: of the two reference points together (`pair`), or of each by itself (`each`). */
  readonly strongMm: number;
  readonly strongOf: 'pair' | 'each';
  readonly basis?: Basis;
}

/** Items that are one number ordered and one measured, with the unit of their limit. */
export const PLACED_ITEMS = {
  'segment-height': 'mm',
  'segment-height-difference': 'mm',
  'segment-separation': 'mm',
  'segment-tilt': 'degrees',
  'fitting-cross-height': 'mm',
  'fitting-cross-height-difference': 'mm',
  'fitting-cross-horizontal': 'mm',
  'centre-thickness': 'mm',
  'base-curve': 'D',
  warpage: 'D',
  'polarising-axis': 'degrees',
} as const satisfies Record<string, LimitUnit>;
export type PlacedItem = keyof typeof PLACED_ITEMS;

/** The limit of such an item, plus or minus, in the item's unit. */
export interface PlacedTolerance {
  readonly limit: number;
  /** Where it differs from its table's. */
  readonly basis?: Basis;
}

/** Cylinder limits for orders whose strongest meridian is at most `strongestUpToD`. */
export interface CylinderRow {
  readonly strongestUpToD: number;
  /** By the cylinder ordered, D. */
  readonly bands: readonly Band[];
}

/** All limits for one kind of lens. Null: no limit held. */
export interface LensTolerances {
  /** By the ordered power of the meridian named, D. */
  readonly power: { readonly meridians: PowerMeridians; readonly bands: readonly Band[] } | null;
  readonly cylinder: readonly CylinderRow[] | null;
  /** By the cylinder ordered, D. */
  readonly axis: readonly Band[] | null;
  /** By the add ordered, D. */
  readonly add: readonly Band[] | null;
  readonly horizontalPrism: PrismTolerance | null;
  readonly verticalPrism: PrismTolerance | null;
  readonly placed: Readonly<Partial<Record<PlacedItem, PlacedTolerance>>>;
}

/** Kinds of lens that standards tell apart. */
export const LENS_KINDS = ['single-vision', 'multifocal', 'progressive'] as const;
export type LensKind = (typeof LENS_KINDS)[number];

/** A standard, or a shop's own profile. */
export interface ToleranceStandard {
  readonly id: string;
  readonly title: string;
  readonly basis: Basis;
  /** What the printed sheet must say beside the figures; empty when nothing. */
  readonly note: string;
  readonly lenses: Readonly<Record<LensKind, LensTolerances>>;
}

/** No limit held on anything. */
export const NO_LIMITS: LensTolerances = {
  power: null,
  cylinder: null,
  axis: null,
  add: null,
  horizontalPrism: null,
  verticalPrism: null,
  placed: {},
};

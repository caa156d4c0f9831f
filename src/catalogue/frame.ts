/** A frame of the shop: one model with its sizes and colourways. Right lens, front view; see optics/types. */

/** How the lens is held. Places are of the right lens, mm from its boxed centre; the left is the mirror image. */
export type Mounting =
  | { readonly kind: 'full' }
  | { readonly kind: 'grooved' }
  | { readonly kind: 'drilled'; readonly holes: readonly Hole[] };

export interface Hole {
  /** From the nearest side of the box inwards: nasal holes lie at +x, temporal ones at -x. */
  readonly side: 'nasal' | 'temporal';
  /** Distance of the hole's centre from the boxed side, mm. */
  readonly insetMm: number;
  /** Height of the hole's centre above the boxed centre, mm. */
  readonly aboveCentreMm: number;
  readonly diameterMm: number;
}

export const MOUNTINGS = ['full', 'grooved', 'drilled'] as const;
export type MountingKind = (typeof MOUNTINGS)[number];

export const BRIDGES = ['saddle', 'keyhole', 'pads'] as const;
/** How the frame rests on the nose: a plain saddle, a keyhole, or adjustable pads. */
export type Bridge = (typeof BRIDGES)[number];

export const FINISHES = ['solid', 'mottled', 'clear', 'brushed', 'polished'] as const;
export type Finish = (typeof FINISHES)[number];

/** Colour of one part. */
export interface PartColour {
  /** sRGB, `#rrggbb`. */
  readonly colour: string;
  /** Second colour of a mottled finish; null elsewhere. */
  readonly second: string | null;
  readonly finish: Finish;
}

export interface Colourway {
  readonly code: string;
  readonly name: string;
  readonly front: PartColour;
  readonly bridge: PartColour;
  readonly temples: PartColour;
  /** Minor units, added to the frame's price; may be negative. */
  readonly priceDifferenceMinor: number;
  readonly stock: Stock;
}

export const STOCKS = ['in-stock', 'made-to-order', 'sold-out'] as const;
export type Stock = (typeof STOCKS)[number];

/** Shape of the right lens. */
export interface FrameOutline {
  /** `traced`: measured radii. `fitted`: drawn from A, B, ED and a family, an estimate until traced. */
  readonly origin: 'traced' | 'fitted';
  /** Family of a fitted outline; null for a traced one. */
  readonly family: string | null;
  /** Radii at equal angles from the boxed centre, counter-clockwise from +x, right lens, mm. */
  readonly radiiMm: readonly number[];
}

export interface FrameSize {
  /** Such as `51-19`: what the temple is stamped with, and the request's `size`. */
  readonly id: string;
  /** What shoppers read, where it is not the id. */
  readonly name?: string;
  readonly aMm: number;
  readonly bMm: number;
  readonly dblMm: number;
  readonly edMm: number;
  readonly templeMm: number;
  readonly bridge: Bridge;
  readonly outline: FrameOutline;
  /** Minor units, added to the frame's price; may be negative. */
  readonly priceDifferenceMinor: number;
}

/** A photograph of the owner's. */
export interface FramePicture {
  /** Name of the file in content/frames/pictures. */
  readonly file: string;
  /** What is seen, for those who do not see it. */
  readonly alt: string;
  /** Code of the colourway that is shown; null: none in particular. */
  readonly colourway: string | null;
}

/** A size and colourway that are not made together, with the reason that the shopper sees. */
export interface NotOffered {
  readonly size: string;
  readonly colourway: string;
  readonly because: string;
}

export interface Frame {
  readonly id: string;
  readonly model: string;
  /** Id of a collection, such as `harbour`. */
  readonly collection: string;
  /** One sentence for lists. */
  readonly summary: string;
  /** HTML made from the file's Markdown. */
  readonly story: string;
  readonly priceMinor: number;
  /** What the front is made of, in the trade's words. */
  readonly material: string;
  readonly wearer: 'adult' | 'child';
  /** Sold as a sun frame first: shown with sun lenses in lists. */
  readonly sun: boolean;
  readonly mounting: Mounting;
  /** How thick the rim is from front to back: an edge up to this is hidden by it, mm. 0 where there is no rim. */
  readonly rimDepthMm: number;
  /** How much of the lens the rim covers, radially from the bevel apex, mm. */
  readonly rimCoverMm: number;
  /** Angle of each rim to the plane of the front, degrees; 0 is flat. */
  readonly faceFormDeg: number;
  /** Curve that the rims are bent to, D at the tool index 1.530. */
  readonly frameCurveD: number;
  /** Mass of the frame without lenses, g. */
  readonly massG: number;
  /** What is in the rims when the frame arrives. */
  readonly comesFitted: string;
  readonly inTheBox: readonly string[];
  readonly colourways: readonly Colourway[];
  readonly sizes: readonly FrameSize[];
  readonly notOffered: readonly NotOffered[];
}

/** A frame with what its pages alone tell: no price and no verdict looks at it. */
export interface ListedFrame extends Frame {
  /** Ids that it had before: their addresses lead to it. */
  readonly formerIds: readonly string[];
  /** First civil day in the shop; null: not told. */
  readonly added: string | null;
  /** Civil day of the last change that a shopper would notice; null: not told. */
  readonly changed: string | null;
  /** The first stands for the frame. Empty: it is shown by its drawing. */
  readonly pictures: readonly FramePicture[];
}

/** The frame as prices and verdicts see it, for what is sent to browsers. */
export function bareFrame({
  formerIds: _,
  added: _a,
  changed: _c,
  pictures: _p,
  ...frame
}: ListedFrame): Frame {
  return { ...frame, story: '' };
}

/** What is priced: the goods of an order, resolved to their content entries, and what was asked with them. */
import type { Coating } from '../catalogue/coating.ts';
import type { Design } from '../catalogue/design.ts';
import type { Colourway, Frame, FrameSize } from '../catalogue/frame.ts';
import type { Material, StockBlanks } from '../catalogue/material.ts';
import type { Tint } from '../catalogue/tint.ts';

export interface PricedFrame {
  readonly frame: Frame;
  readonly size: FrameSize;
  readonly colourway: Colourway;
}

export interface PricedLenses {
  readonly design: Design;
  readonly material: Material;
  readonly tint: Tint | null;
  readonly coating: Coating | null;
  /** Both eyes cut from these ready-made lenses; null: made to order. */
  readonly stock: StockBlanks | null;
  /** Largest power of any meridian of the stronger eye, either sign, D. */
  readonly strongestMeridianD: number;
  /** Larger cylinder of the eyes, either sign, D. */
  readonly cylinderD: number;
  /** Larger ordered prism of the eyes, prism dioptres. */
  readonly prism: number;
  /** Larger add of the eyes, D; 0 where there is none. */
  readonly addD: number;
}

export interface PricedPair {
  /** Null: the shopper's own frame. */
  readonly frame: PricedFrame | null;
  /** Null: a frame by itself. */
  readonly lenses: PricedLenses | null;
}

export interface Asked {
  /** Civil date in the shop's time zone that the price is for, `YYYY-MM-DD`. */
  readonly date: string;
  /** ISO 3166 country or subdivision, such as `US-ME`; case and outer spaces do not matter. */
  readonly destination: string;
  /** Id of one of the shop's exemptions; null: none is claimed. */
  readonly taxExemption: string | null;
  /** As typed: case and outer spaces do not matter, nor does their order. */
  readonly codes: readonly string[];
}

/** The shop as read: what every part of Bevelbook works on. Plain JSON. */
import type { Coating } from './coating.ts';
import type { Design } from './design.ts';
import type { Frame, ListedFrame } from './frame.ts';
import type { Material } from './material.ts';
import type { PriceHabits } from './priceHabits.ts';
import type { Promotion } from './promotion.ts';
import type { Shop } from './shop.ts';
import type { Tint } from './tint.ts';
import type { Workroom } from './workroom.ts';

/** A group of frames. */
export interface Collection {
  readonly id: string;
  readonly name: string;
  readonly summary: string;
}

/** A prose page, at `/<slug>/`. */
export interface Page {
  readonly slug: string;
  readonly title: string;
  readonly description: string;
  /** Place in the menu, from 1; null: not in the menu. */
  readonly menu: number | null;
  readonly html: string;
}

/** Sentences and labels of one language: key to text with `{slots}`. */
export type Words = Readonly<Record<string, string>>;

/** What a quote needs. */
export interface Offer {
  readonly shop: Shop;
  readonly frames: readonly Frame[];
  readonly designs: readonly Design[];
  readonly materials: readonly Material[];
  readonly tints: readonly Tint[];
  readonly coatings: readonly Coating[];
  readonly promotions: readonly Promotion[];
  readonly words: Words;
}

/** All of the shop. */
export interface Catalogue extends Offer {
  readonly frames: readonly ListedFrame[];
  readonly collections: readonly Collection[];
  readonly pages: readonly Page[];
  /** For the owner's side alone: never part of what a shopper's browser gets. */
  readonly workroom: Workroom;
  /** For the owner's side alone, as the workroom is. */
  readonly priceHabits: PriceHabits;
}

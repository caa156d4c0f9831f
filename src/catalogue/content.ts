/** The shop's content, file by file, before the files are joined: what the cross-checks look at. */
import type { ContentFault } from './fault.ts';
import type { Entry, Origin } from './reading/entry.ts';
import type { AuthoredCoating } from './schema/coating.ts';
import type { AuthoredDesign } from './schema/design.ts';
import type { AuthoredFrame } from './schema/frame.ts';
import type { AuthoredMaterial } from './schema/material.ts';
import type { TracedOutline } from './schema/outline.ts';
import type { AuthoredPage } from './schema/page.ts';
import type { AuthoredPromotion } from './schema/promotion.ts';
import type { AuthoredShop } from './schema/shop.ts';
import type { AuthoredTint } from './schema/tint.ts';
import type { WordsTree } from './schema/words.ts';

/** A file of sentences; its name says nothing. */
export interface WordsFile {
  readonly language: string;
  readonly entry: Entry<WordsTree>;
}

export interface Content {
  /** The content folder as faults name it. */
  readonly root: string;
  /** Null where there is no shop.yaml. */
  readonly shop: Entry<AuthoredShop> | null;
  readonly frames: readonly Entry<AuthoredFrame>[];
  readonly outlines: readonly Entry<TracedOutline>[];
  readonly designs: readonly Entry<AuthoredDesign>[];
  readonly materials: readonly Entry<AuthoredMaterial>[];
  readonly tints: readonly Entry<AuthoredTint>[];
  readonly coatings: readonly Entry<AuthoredCoating>[];
  readonly promotions: readonly Entry<AuthoredPromotion>[];
  readonly pages: readonly Entry<AuthoredPage>[];
  readonly words: readonly WordsFile[];
}

/** A check of the content as a whole. */
export type Check = (content: Content) => readonly ContentFault[];

/** Entries that their schema let through. */
export function sound<T>(entries: readonly Entry<T>[]): { id: string; origin: Origin; value: T }[] {
  return entries.flatMap(({ id, origin, value }) => (value === null ? [] : [{ id, origin, value }]));
}

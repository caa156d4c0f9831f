/** The shop's content, file by file, before the files are joined: what the cross-checks look at. */

import type { OutlineFamily } from '../optics/outlineFamily.ts';
import type { Collection, Page } from './catalogue.ts';
import type { Coating } from './coating.ts';
import type { Design } from './design.ts';
import type { ContentFault } from './fault.ts';
import { type FormerNames, formerNames } from './formerNames.ts';
import type { FrameSize, ListedFrame } from './frame.ts';
import type { Material, StockBlanks } from './material.ts';
import type { PriceHabits } from './priceHabits.ts';
import type { Promotion } from './promotion.ts';
import type { Entry, Origin } from './reading/origin.ts';
import type { PictureFile } from './reading/pictureKind.ts';
import type { Shop } from './shop.ts';
import type { Tint } from './tint.ts';
import type { Translation, WordsFile } from './translation/files.ts';
import type { Workroom } from './workroom.ts';

/** Ids of another kind, or every one that the shop has. */
export type Ids = 'all' | readonly string[];

/** A noun as its file gives it, shorthand read: id and story come from elsewhere, `Lists` may still say `all`. */
type Authored<Noun, Lists extends keyof Noun = never> = Omit<Noun, 'id' | 'story' | Lists> & {
  readonly [List in Lists]: Ids;
};

/** Its place among its kind: lower first. */
interface Ordered {
  readonly order: number;
}

export type AuthoredDesign = Authored<Design, 'materials'> & Ordered;
export type AuthoredTint = Authored<Tint, 'materials' | 'designs'> & Ordered;
export type AuthoredCoating = Authored<Coating, 'materials' | 'tints'> & Ordered;
export type AuthoredPromotion = Authored<Promotion> & Ordered;
export type AuthoredStock = Authored<StockBlanks, 'coatings' | 'tints'> & { readonly id: string };
export type AuthoredMaterial = Omit<Authored<Material>, 'stock'> &
  Ordered & { readonly stock: readonly AuthoredStock[] };

/** A size whose outline is still to be fitted or looked up. */
export type AuthoredSize = Omit<FrameSize, 'outline'> & {
  readonly outline: { readonly family: OutlineFamily } | { readonly traced: string };
};
export type AuthoredFrame = Omit<Authored<ListedFrame>, 'sizes'> & {
  readonly sizes: readonly AuthoredSize[];
};

/** The digits follow from the currency, the languages begin with the shop's own. */
export type AuthoredShop = Omit<Shop, 'currencyDigits' | 'languages' | 'path'> & {
  readonly otherLanguages: readonly string[];
  readonly collections: readonly Collection[];
  readonly workroom: Workroom;
  readonly prices: PriceHabits;
};
export type AuthoredPage = Omit<Page, 'slug' | 'html'>;

/** Radii at equal angles round any point inside, mm. */
export interface TracedOutline {
  readonly radiiMm: readonly number[];
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
  readonly pictures: readonly PictureFile[];
  readonly translations: readonly Translation[];
}

/** A check of the content as a whole. */
export type Check = (content: Content) => readonly ContentFault[];

/** An entry that its schema let through. */
export interface Sound<T> {
  readonly id: string;
  readonly origin: Origin;
  readonly value: T;
}

/** A field that a check asks for and that was not read. */
const UNREAD = Symbol('a field that was not read');

/**
 * Faults of single entries. Entries that their schema refused are looked at as far as they were read: a check that asks
 * for a field that was not says nothing.
 */
export function faultsOf<T extends object>(
  entries: readonly Entry<T>[],
  ...checks: readonly ((entry: Sound<T>) => readonly ContentFault[])[]
): ContentFault[] {
  return entries.flatMap((entry) => {
    const value = entry.value ?? readParts<T>(entry);
    return checks.flatMap((check) => {
      try {
        return check({ ...entry, value });
      } catch (reason) {
        if (reason === UNREAD) return [];
        throw reason;
      }
    });
  });
}

function readParts<T extends object>({ parts }: Entry<T>): T {
  const get = (_: T, name: string | symbol): unknown => {
    if (typeof name === 'string' && Object.hasOwn(parts, name)) return parts[name];
    throw UNREAD;
  };
  return new Proxy({} as T, { get });
}

/** What frames of the content were called before. */
export const namesOfFrames = ({ frames }: Content): FormerNames =>
  formerNames(sound(frames).map(({ id, value }) => ({ id, formerIds: value.formerIds })));

/** Entries that their schema let through. */
export function sound<T>(entries: readonly Entry<T>[]): Sound<T>[] {
  return entries.flatMap(({ id, origin, value }) => (value === null ? [] : [{ id, origin, value }]));
}

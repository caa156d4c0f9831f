/** A dated offer. Promotions are tried in the order of the list; each is used once a quote at most. */

/** What a promotion looks at; a list that is null says nothing. All lists given must agree. */
export interface PromotionScope {
  readonly collections: readonly string[] | null;
  readonly frames: readonly string[] | null;
  readonly designs: readonly string[] | null;
  readonly materials: readonly string[] | null;
  readonly tints: readonly string[] | null;
  readonly coatings: readonly string[] | null;
  /** Goods of the order, before promotions, that must be reached, minor units; null: any sum. */
  readonly leastGoodsMinor: number | null;
  /** Pairs that the order must hold at least. */
  readonly leastPairs: number;
}

export type Gift =
  /** A share of the price of what `on` names. */
  | { readonly kind: 'percent'; readonly on: 'frame' | 'lenses' | 'pair'; readonly sharePpm: number }
  /** A sum off what `on` names, never below 0. */
  | { readonly kind: 'amount'; readonly on: 'frame' | 'lenses' | 'pair'; readonly amountMinor: number }
  /** Lenses of this kind are included; with dearer ones their list price is taken off as a credit. */
  | {
      readonly kind: 'included-lens';
      readonly design: string;
      readonly material: string;
      readonly tint: string | null;
      readonly coating: string | null;
    }
  /** No charge for shipping. */
  | { readonly kind: 'shipping' };

export interface Promotion {
  readonly id: string;
  readonly title: string;
  /** The sentence that a quote line carries. */
  readonly sentence: string;
  readonly story: string;
  /** First and last civil day in the shop's time zone, both included, `YYYY-MM-DD`; null: open. */
  readonly starts: string | null;
  readonly ends: string | null;
  /** What the shopper types; null: applies by itself. */
  readonly code: string | null;
  readonly scope: PromotionScope;
  readonly gift: Gift;
  /** May be used together with others: `all`, `none`, or the ids named. Both sides must agree. */
  readonly joins: 'all' | 'none' | readonly string[];
}

/** One amount of a quote before its label is written out: labels cost more than sums, and a search needs none. */
import { sumMinor } from '../money/minor.ts';
import type { LineKind } from './line.ts';
import type { PriceWord } from './words.ts';

/** A value that is written the shop's way when the label is made. */
export type Slot = string | number | { readonly minor: number } | { readonly ppm: number };

/** A sentence of the shop's words, with what fills its slots. */
export interface Wording {
  readonly key: PriceWord;
  readonly slots: Readonly<Record<string, Slot>>;
}

export interface Charge {
  readonly kind: LineKind;
  /** Index of the pair; null: the whole order. */
  readonly pair: number | null;
  /** A wording, or the owner's own sentence as it stands. */
  readonly label: Wording | string;
  readonly amountMinor: number;
  /** Content entry that the amount comes from. */
  readonly source: string;
}

/** Sum of the amounts, minor units. */
export function chargesTotal(charges: readonly Charge[]): number {
  return sumMinor(charges.map((charge) => charge.amountMinor));
}

/** How a shop takes orders: who can open them, how they come in, what the buyer consents to, how they are paid. */

/** `save` the file, hand it to the device's `share` sheet, save it and open a `mail`, or `post` it to an address. */
export const DELIVERIES = ['save', 'share', 'mail', 'post'] as const;
export type Delivery = (typeof DELIVERIES)[number];

/** A sentence that the buyer accepts; the order carries its exact words. */
export interface Consent {
  readonly id: string;
  readonly text: string;
}

/** A way to pay. No card data is ever asked for. */
export interface Payment {
  readonly id: string;
  readonly label: string;
  /** What the buyer is told; may hold `{number}` and `{total}`. */
  readonly words: string;
  /** Address of the shop's payment page, with `{number}` and `{total}` to be filled in; null: none. */
  readonly link: string | null;
}

export interface OrderTerms {
  /** age recipients that order files are sealed to; empty: whoever sees a file can read it. */
  readonly publicKeys: readonly string[];
  /** Ways to send the file, the first choice first. */
  readonly delivery: readonly Delivery[];
  /** Where `post` sends to; null where it is not among the ways. */
  readonly postTo: string | null;
  readonly consents: readonly Consent[];
  readonly payments: readonly Payment[];
}

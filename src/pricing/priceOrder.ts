/** Prices an order: explained lines whose sum is the total. See reckon.ts for their order. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Slots } from '../catalogue/words.ts';
import { chargesTotal } from './charge.ts';
import { codesTyped } from './codes.ts';
import type { QuoteLine } from './line.ts';
import type { Asked, PricedPair } from './pair.ts';
import { type Reckoning, reckon, reckonTotal } from './reckon.ts';
import { type PriceFault, termsOf } from './terms.ts';
import { slotsOf, worded } from './wording.ts';

/** What became of a promotion: `why` is a key of the words files, `figures` fills its slots. */
export interface PromotionOutcome {
  readonly id: string;
  readonly used: boolean;
  readonly why: string;
  readonly figures: Slots;
}

/** What became of a code that was typed. */
export interface CodeOutcome {
  readonly code: string;
  readonly used: boolean;
  readonly why: string;
  readonly figures: Slots;
}

export interface PricedOrder {
  readonly currency: string;
  /** Digits after the point in the currency. */
  readonly digits: number;
  readonly lines: readonly QuoteLine[];
  /** Sum of the lines, minor units. */
  readonly totalMinor: number;
  readonly codes: readonly CodeOutcome[];
  /** In declared order; those whose code was not typed are left out. */
  readonly promotions: readonly PromotionOutcome[];
}

export interface PriceRefusal {
  readonly ok: false;
  readonly faults: readonly PriceFault[];
}

export type PriceReply = { readonly ok: true; readonly order: PricedOrder } | PriceRefusal;

/** Prices orders of one offer on the same terms; `totalMinor` writes no labels, for many packages at once. */
export interface Pricer {
  readonly ok: true;
  readonly order: (pairs: readonly PricedPair[]) => PricedOrder;
  readonly totalMinor: (pairs: readonly PricedPair[]) => number;
}

function written(offer: Offer, asked: Asked, { charges, considered }: Reckoning): PricedOrder {
  return {
    currency: offer.shop.currency,
    digits: offer.shop.currencyDigits,
    lines: charges.map(({ kind, pair, label, amountMinor, source }) => {
      return { kind, pair, label: worded(offer, label), amount: amountMinor, source };
    }),
    totalMinor: chargesTotal(charges),
    codes: codesTyped(asked.codes, considered).map(({ code, used, why }) => {
      return { code, used, why: why.key, figures: slotsOf(offer, why.slots) };
    }),
    promotions: considered.map(({ promotion, used, why }) => {
      return { id: promotion.id, used, why: why.key, figures: slotsOf(offer, why.slots) };
    }),
  };
}

/**
 * A pricer for what was asked, or the faults that leave it without a price (see termsOf). Its functions throw a
 * RangeError for a strength that is not finite or a sum that leaves the safe integers, and an Error that names the
 * key when the words lack a sentence.
 */
export function pricer(offer: Offer, asked: Asked): Pricer | PriceRefusal {
  const found = termsOf(offer, asked);
  if (!found.ok) return found;
  const { terms } = found;
  return {
    ok: true,
    order: (pairs) => written(offer, asked, reckon(offer, terms, pairs)),
    totalMinor: (pairs) => reckonTotal(offer, terms, pairs),
  };
}

/**
 * The price of an order, or the faults that leave it without one; see pricer for what throws. The request's schema
 * sees to it that there is a pair: without one, shipping alone would be priced.
 */
export function priceOrder(offer: Offer, pairs: readonly PricedPair[], asked: Asked): PriceReply {
  const found = pricer(offer, asked);
  return found.ok ? { ok: true, order: found.order(pairs) } : found;
}

/** The whole reckoning of an order, before its labels are written. */
import type { Offer } from '../catalogue/catalogue.ts';
import { sumMinor } from '../money/minor.ts';
import { type Charge, chargesTotal } from './charge.ts';
import { goodsTotal } from './goods.ts';
import { listCharges, listSums } from './listPrice.ts';
import type { PricedPair } from './pair.ts';
import { applyPromotions, type Considered, leftAfter } from './promotions.ts';
import { taxCharges, taxTotal } from './tax.ts';
import type { Terms } from './terms.ts';

export interface Reckoning {
  /** In the order of a quote: pair by pair at list price with surcharges, promotions on them, shipping and its promotion, tax. */
  readonly charges: readonly Charge[];
  readonly considered: readonly Considered[];
}

/** The sum of a reckoning, minor units, without its lines; equal to the total of `reckon`, which a law holds. */
export function reckonTotal(offer: Offer, terms: Terms, pairs: readonly PricedPair[]): number {
  const goods = { pairs: pairs.map(listSums), shipping: terms.shipping.amountMinor };
  const left = leftAfter(offer, terms.candidates, pairs, goods);
  return sumMinor([goodsTotal(left), left.shipping, taxTotal(terms, left)]);
}

/** Prices the pairs on the terms. Shipping that a promotion gives away stays a line, with its credit behind it. */
export function reckon(offer: Offer, terms: Terms, pairs: readonly PricedPair[]): Reckoning {
  const lists = pairs.map(listCharges);
  const goods = {
    pairs: lists.map(({ frame, lenses }) => ({ frame: chargesTotal(frame), lenses: chargesTotal(lenses) })),
    shipping: terms.shipping.amountMinor,
  };
  const { charges, considered, left } = applyPromotions(offer, terms.candidates, pairs, goods);
  const shipping: Charge = {
    kind: 'shipping',
    pair: null,
    label: terms.shipping.label,
    amountMinor: goods.shipping,
    source: 'shop',
  };
  const listed = lists.flatMap(({ frame, lenses }) => [...frame, ...lenses]);
  const ofGoods = charges.filter(({ pair }) => pair !== null);
  const ofShipping = charges.filter(({ pair }) => pair === null);
  return {
    charges: [...listed, ...ofGoods, shipping, ...ofShipping, ...taxCharges(terms, left)],
    considered,
  };
}

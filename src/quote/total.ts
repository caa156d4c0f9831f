/** Totals of an order with one pair changed: what options, alternatives and remedies are compared by. */
import type { Offer } from '../catalogue/catalogue.ts';
import { pricer } from '../pricing/priceOrder.ts';
import type { Situation } from '../rules/situation.ts';
import type { ShopFrame } from './frameShape.ts';
import { askedOf, pricedLenses } from './priced.ts';
import type { QuoteRequest } from './request.ts';
import { resolvePair } from './resolve.ts';
import { situate } from './situation.ts';

/** Total in minor units with these goods in place of the pair; null where the order has no price. */
export type OrderTotal = (shopFrame: ShopFrame | null, situation: Situation) => number | null;

/** The order's total by the goods of its pair at `at`; the other pairs are read once. */
export function orderTotal(offer: Offer, request: QuoteRequest, at: number): OrderTotal {
  const asked = pricer(offer, askedOf(offer, request));
  const others = request.pairs.map((pair, index) => {
    const resolved = index === at ? null : resolvePair(offer, pair, '', []);
    if (resolved === null) return null;
    const situation = situate(offer.shop.habits, request.date, pair, resolved.frame, resolved.lenses);
    return { frame: resolved.shopFrame, lenses: pricedLenses(situation) };
  });
  if (!asked.ok || others.some((other, index) => other === null && index !== at)) return () => null;
  return (shopFrame, situation) => {
    const own = { frame: shopFrame, lenses: pricedLenses(situation) };
    return asked.totalMinor(others.map((other) => other ?? own));
  };
}

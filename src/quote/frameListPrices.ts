/**
 * Packages by price before any lens is computed: the price depends on the lens only by whether it comes from stock.
 * Frames that cost the same on the same terms share one reckoning.
 */
import type { Offer } from '../catalogue/catalogue.ts';
import type { StockBlanks } from '../catalogue/material.ts';
import type { Situation } from '../rules/situation.ts';
import type { LensPackage } from './frameListPackages.ts';
import { type ListRequest, pairIn } from './frameListRequest.ts';
import { optionsOf, withoutPd } from './frameListTry.ts';
import { type ShopFrame, shopFrameShape } from './frameShape.ts';
import { situate } from './situation.ts';
import { orderTotal } from './total.ts';

export interface PricedPackage {
  readonly lenses: LensPackage;
  /** The least that it can come to, minor units; 0 where the order has no price. */
  readonly leastMinor: number;
  /** What it comes to by what it is cut from, minor units; null: no price. */
  readonly totalMinor: (stock: StockBlanks | null) => number | null;
}

/** Packages of a frame as sold, cheapest first; equal ones in the shop's order. */
export type PriceList = (place: ShopFrame) => readonly PricedPackage[];

/** Price lists of the packages of an ordinary and of a sun frame. */
export function priceLists(
  offer: Offer,
  asked: ListRequest,
  packages: (sun: boolean) => readonly LensPackage[],
): PriceList {
  const known = new Map<string, readonly PricedPackage[]>();
  const price = pricing(offer, asked);
  const framesNamed = offer.promotions.some(({ scope }) => scope.frames !== null);
  return (place) => {
    const { frame, size, colourway } = place;
    const terms = [
      frame.sun,
      frame.collection,
      framesNamed ? frame.id : '',
      frame.priceMinor,
      size.priceDifferenceMinor,
      colourway.priceDifferenceMinor,
    ].join(' ');
    let list = known.get(terms);
    if (list === undefined) {
      list = packages(frame.sun)
        .map((lenses) => price(place, lenses))
        .sort((one, other) => one.leastMinor - other.leastMinor);
      known.set(terms, list);
    }
    return list;
  };
}

/** Prices one package in a frame. */
function pricing(offer: Offer, asked: ListRequest): (place: ShopFrame, lenses: LensPackage) => PricedPackage {
  // Without measurements no lens is made: what is ordered, and so surcharged, depends on the design alone.
  const unmeasured = withoutPd(asked);
  const ordered = new Map<string, Situation>();
  let total: ReturnType<typeof orderTotal> | null = null;
  return (place, lenses) => {
    const { design, material, tint, coating, blanks } = lenses;
    const request = pairIn(place, lenses, unmeasured, offer.shop.habits);
    total ??= orderTotal(offer, { ...asked, pairs: [request] }, 0);
    let base = ordered.get(design.id);
    if (base === undefined) {
      base = situate(offer.shop.habits, asked.date, request, shopFrameShape(place), optionsOf(lenses));
      ordered.set(design.id, base);
    }
    const totals = new Map<string | null, number | null>();
    for (const stock of blanks)
      totals.set(stock?.id ?? null, total(place, { ...base, design, material, tint, coating, stock }));
    return {
      lenses,
      leastMinor: Math.min(...[...totals.values()].map((minor) => minor ?? 0)),
      totalMinor: (stock) => totals.get(stock?.id ?? null) ?? null,
    };
  };
}

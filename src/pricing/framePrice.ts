/** What a frame costs by itself on a day, so that pages and feeds say what a quote would. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Promotion } from '../catalogue/promotion.ts';
import { goodsTotal } from './goods.ts';
import { listSums } from './listPrice.ts';
import type { PricedFrame } from './pair.ts';
import { applyPromotions } from './promotions.ts';
import { candidatesFor } from './terms.ts';

export interface FramePrice {
  /** Minor units, before promotions. */
  readonly listMinor: number;
  /** Minor units, less the promotions that apply by themselves to this frame alone; no shipping, no tax. */
  readonly dueMinor: number;
  /** Those that took something off, in declared order. */
  readonly promotions: readonly Promotion[];
  /** Last civil day on which all of them run; null: none of them ends. */
  readonly until: string | null;
}

/** The price of one size and colourway on a civil date. */
export function framePrice(offer: Offer, frame: PricedFrame, date: string): FramePrice {
  const pairs = [{ frame, lenses: null }];
  const goods = { pairs: pairs.map(listSums), shipping: 0 };
  const candidates = candidatesFor(offer.promotions, { codes: [], date });
  const { considered, left } = applyPromotions(offer, candidates, pairs, goods);
  const promotions = considered.filter(({ used }) => used).map(({ promotion }) => promotion);
  const ends = promotions.flatMap(({ ends: last }) => last ?? []).sort();
  return { listMinor: goodsTotal(goods), dueMinor: goodsTotal(left), promotions, until: ends[0] ?? null };
}

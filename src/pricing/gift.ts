/**
 * What a promotion's gift takes off. Every gift works on what the promotions declared before it have left, so a
 * second percentage is taken of the reduced price, and none takes off more than there is.
 */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Gift } from '../catalogue/promotion.ts';
import { allocate } from '../money/allocate.ts';
import { sumMinor } from '../money/minor.ts';
import { shareOf } from '../money/share.ts';
import type { Goods, PairGoods } from './goods.ts';
import type { PricedLenses } from './pair.ts';

type IncludedLens = Extract<Gift, { kind: 'included-lens' }>;

const NONE: PairGoods = { frame: 0, lenses: 0 };

/** The part that a gift may be taken from. A list price that is below 0 by its own differences gives nothing. */
function reach(
  { frame, lenses }: PairGoods,
  on: 'frame' | 'lenses' | 'pair',
): [frame: number, lenses: number] {
  return [on === 'lenses' ? 0 : Math.max(0, frame), on === 'frame' ? 0 : Math.max(0, lenses)];
}

/**
 * Price of the kind of lenses that a promotion includes, minor units a pair: the list price, or that of the
 * ready-made ones where this pair's own lenses are of that kind and ready-made. So lenses of the included kind cost
 * nothing, and their extras their full price. Throws when the shop lacks the kind.
 */
export function includedPrice(offer: Offer, gift: IncludedLens, chosen: PricedLenses | null): number {
  const price = (kind: string, options: readonly { id: string; priceMinor: number }[], id: string | null) => {
    if (id === null) return 0;
    const option = options.find((candidate) => candidate.id === id);
    if (!option) throw new Error(`A promotion includes the ${kind} "${id}", which the shop does not have.`);
    return option.priceMinor;
  };
  const design = price('design', offer.designs, gift.design);
  const material = price('material', offer.materials, gift.material);
  const readyMade =
    chosen?.design.id === gift.design && chosen.material.id === gift.material ? chosen.stock : null;
  return sumMinor([
    readyMade?.priceMinor ?? sumMinor([design, material]),
    price('tint', offer.tints, gift.tint),
    price('coating', offer.coatings, gift.coating),
  ]);
}

/**
 * What the gift takes off each part of the order, minor units, 0 or more and never more than is left.
 * A percentage and included lenses are given with every pair in scope. An amount is given once: it is spread over
 * the parts of the pairs in scope in proportion to what is left of them, to the last minor unit.
 */
export function cutOf(
  offer: Offer,
  gift: Gift,
  goods: Goods,
  inScope: readonly boolean[],
  chosen: readonly (PricedLenses | null)[],
): Goods {
  const eachPair = (take: (pair: PairGoods, lenses: PricedLenses | null) => PairGoods): Goods => ({
    pairs: goods.pairs.map((pair, index) => (inScope[index] ? take(pair, chosen[index] ?? null) : NONE)),
    shipping: 0,
  });
  switch (gift.kind) {
    case 'percent':
      return eachPair((pair) => {
        const parts = reach(pair, gift.on);
        const whole = sumMinor(parts);
        const [frame = 0, lenses = 0] = allocate(Math.min(whole, shareOf(whole, gift.sharePpm)), parts);
        return { frame, lenses };
      });
    case 'amount': {
      const parts = goods.pairs.flatMap((pair, index) => (inScope[index] ? reach(pair, gift.on) : [0, 0]));
      const shares = allocate(Math.min(gift.amountMinor, sumMinor(parts)), parts);
      const pairs = goods.pairs.map((_, index) => ({
        frame: shares[2 * index] ?? 0,
        lenses: shares[2 * index + 1] ?? 0,
      }));
      return { pairs, shipping: 0 };
    }
    case 'included-lens':
      return eachPair(({ lenses }, own) => ({
        frame: 0,
        lenses: Math.min(includedPrice(offer, gift, own), Math.max(0, lenses)),
      }));
    case 'shipping':
      return { pairs: goods.pairs.map(() => NONE), shipping: inScope.includes(true) ? goods.shipping : 0 };
  }
}

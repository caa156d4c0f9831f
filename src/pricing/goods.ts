/** What is still to be paid, by the parts that promotions and taxes tell apart. Minor units. */
import { sumMinor } from '../money/minor.ts';

export interface PairGoods {
  readonly frame: number;
  readonly lenses: number;
}

export interface Goods {
  readonly pairs: readonly PairGoods[];
  readonly shipping: number;
}

/** Frames and lenses of all pairs together, without shipping. */
export function goodsTotal({ pairs }: Goods): number {
  let sum = 0;
  for (const { frame, lenses } of pairs) sum = sumMinor([sum, frame, lenses]);
  return sum;
}

/** What is left when `cut`, of the same pairs, is taken off. */
export function without(goods: Goods, cut: Goods): Goods {
  return {
    pairs: goods.pairs.map(({ frame, lenses }, index) => ({
      frame: frame - (cut.pairs[index]?.frame ?? 0),
      lenses: lenses - (cut.pairs[index]?.lenses ?? 0),
    })),
    shipping: goods.shipping - cut.shipping,
  };
}

/** What a file in content/promotions holds. */
import * as z from 'zod/mini';
import type { Gift } from '../promotion.ts';
import {
  civilDay,
  fields,
  id,
  list,
  type MoneyFields,
  number,
  oneOf,
  orElse,
  orNull,
  text,
  textLike,
  whole,
} from './fields.ts';
import { percent } from './money.ts';

function scope(money: MoneyFields) {
  const ids = orNull(list(id(), 1));
  return z.pipe(
    fields({
      /** Each list: the pair must have one of these. Default null: any. */
      collections: ids,
      frames: ids,
      designs: ids,
      materials: ids,
      tints: ids,
      coatings: ids,
      /** Goods before promotions that must be reached. Default null: any sum. */
      leastGoods: orNull(money.price),
      /** Pairs that the order must hold at least. Default 1. */
      leastPairs: orElse(whole(1, 20), 1),
    }),
    z.transform(({ leastGoods, ...rest }) => ({ ...rest, leastGoodsMinor: leastGoods })),
  );
}

function gift(money: MoneyFields) {
  const on = oneOf(['frame', 'lenses', 'pair']);
  const share = fields({ percent: percent(), on });
  const sum = fields({ amount: money.price, on });
  const lens = fields({
    /** These lenses are included; with dearer ones their list price is a credit. */
    includedLens: fields({ design: id(), material: id(), tint: orNull(id()), coating: orNull(id()) }),
  });
  return z.union(
    [
      z.pipe(
        share,
        z.transform(({ percent: sharePpm, ...rest }): Gift => ({ kind: 'percent', ...rest, sharePpm })),
      ),
      z.pipe(
        sum,
        z.transform(({ amount: amountMinor, ...rest }): Gift => ({ kind: 'amount', ...rest, amountMinor })),
      ),
      z.pipe(
        lens,
        z.transform(({ includedLens }): Gift => ({ kind: 'included-lens', ...includedLens })),
      ),
      z.pipe(
        fields({ shipping: oneOf(['free']) }),
        z.transform((): Gift => ({ kind: 'shipping' })),
      ),
    ],
    { error: '{ percent, on }, { amount, on }, { includedLens } or { shipping: free }' },
  );
}

const NO_SCOPE = {
  collections: null,
  frames: null,
  designs: null,
  materials: null,
  tints: null,
  coatings: null,
  leastGoodsMinor: null,
  leastPairs: 1,
};

/** Schema of a promotion. */
export function promotionSchema(money: MoneyFields) {
  return fields({
    /** Place in the order in which promotions are tried: lower first, equal ones by title. Default 1000. */
    order: orElse(number(-1e6, 1e6), 1000),
    title: text(),
    /** What the line of a quote says. */
    sentence: text(),
    /** First day in the shop's time zone, included. Default null: open. */
    starts: orNull(civilDay()),
    /** Last day, included. Default null: open. */
    ends: orNull(civilDay()),
    /** What the shopper types. Default null: applies by itself. */
    code: orNull(
      textLike(/^[A-Za-z0-9][A-Za-z0-9-]{1,31}$/, 'a code of 2 to 32 letters, digits and hyphens'),
    ),
    /** Default: everything. */
    scope: orElse(scope(money), NO_SCOPE),
    gift: gift(money),
    /** Promotions that it may be used together with; both sides must agree. Default none. */
    joins: orElse(
      z.union([oneOf(['all', 'none']), list(id(), 1)], { error: 'all, none or a list of promotions' }),
      'none',
    ),
  });
}

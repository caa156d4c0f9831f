/** What a file in content/promotions holds. */
import * as z from 'zod/mini';
import type { Gift } from '../promotion.ts';
import { about } from './about.ts';
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
      collections: about('Ids of collections: the pair must have one of these. Default null: any.', ids),
      frames: about('Ids of frames. Default null: any.', ids),
      designs: about('Ids of designs. Default null: any.', ids),
      materials: about('Ids of materials. Default null: any.', ids),
      tints: about('Ids of tints. Default null: any.', ids),
      coatings: about('Ids of coatings. Default null: any.', ids),
      leastGoods: about(
        'Goods before promotions that must be reached. Default null: any sum.',
        orNull(money.price),
      ),
      leastPairs: about('Pairs that the order must hold at least. Default 1.', orElse(whole(1, 20), 1)),
    }),
    z.transform(({ leastGoods, ...rest }) => ({ ...rest, leastGoodsMinor: leastGoods })),
  );
}

function gift(money: MoneyFields) {
  const on = about('What it is taken off.', oneOf(['frame', 'lenses', 'pair']));
  const share = fields({ percent: about('How much off, in percent.', percent(), '15'), on });
  const sum = fields({ amount: about('How much off.', money.price), on });
  const lens = fields({
    includedLens: about(
      'These lenses are included; with dearer ones their list price is a credit.',
      fields({
        design: about('Id of a design.', id(), 'single-vision'),
        material: about('Id of a material.', id()),
        tint: about('Id of a tint. Default null: none.', orNull(id())),
        coating: about('Id of a coating. Default null: none.', orNull(id())),
      }),
    ),
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
        fields({ shipping: about('Nothing is charged for shipping.', oneOf(['free'])) }),
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
    order: about(
      'Place in the order in which promotions are tried: lower first, equal ones by title. Default 1000.',
      orElse(number(-1e6, 1e6), 1000),
    ),
    title: about('Name that the shopper reads.', text(), 'Harbour in November'),
    sentence: about(
      'What the line of a quote says.',
      text(),
      '15 % off every frame of the Harbour collection',
    ),
    starts: about("First day in the shop's time zone, included. Default null: open.", orNull(civilDay())),
    ends: about('Last day, included. Default null: open.', orNull(civilDay())),
    code: about(
      'What the shopper types. Default null: applies by itself.',
      orNull(textLike(/^[A-Za-z0-9][A-Za-z0-9-]{1,31}$/, 'a code of 2 to 32 letters, digits and hyphens')),
    ),
    scope: about('Default: everything.', orElse(scope(money), NO_SCOPE)),
    gift: about(
      'What the shopper gets: a share or an amount off, included lenses, or free shipping.',
      gift(money),
      { percent: '15', on: 'frame' },
      { amount: '20.00', on: 'pair' },
      {
        includedLens: { design: 'single-vision', material: 'polycarbonate', tint: 'clear', coating: 'none' },
      },
      { shipping: 'free' },
    ),
    joins: about(
      'Promotions that it may be used together with; both sides must agree. Default none.',
      orElse(
        z.union([oneOf(['all', 'none']), list(id(), 1)], { error: 'all, none or a list of promotions' }),
        'none',
      ),
    ),
  });
}

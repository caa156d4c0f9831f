import { describe, expect, it } from 'vitest';
import { answerBasket } from '../../../src/configurator/basket/answerBasket.ts';
import { type Basket, NO_BASKET, put } from '../../../src/configurator/basket/basket.ts';
import { linesOf } from '../../../src/configurator/basket/linesOf.ts';
import { choicesOf } from '../../../src/configurator/choices.ts';
import type { Entries } from '../../../src/configurator/fields.ts';
import { holdPair } from '../../../src/configurator/keeping/parts.ts';
import { readEntries } from '../../../src/configurator/readEntries.ts';
import { shopData } from '../../../src/configurator/shopData.ts';
import { quote } from '../../../src/quote/quote.ts';
import { DATE, frameOf, shop } from '../shop.ts';

const data = shopData(shop);
const known = (id: string) => shop.frames.find((frame) => frame.id === id) ?? null;
const answer = (basket: Basket) => answerBasket(basket, known, data, DATE);

const MYOPE: Entries = {
  'right.sphere': '-3.25',
  'left.sphere': '-2.75',
  'pd.right': '31.5',
  'pd.left': '32',
};

function basketOf(pairs: readonly (readonly [string, Entries])[], terms: Entries = {}): Basket {
  return pairs.reduce<Basket>((basket, [id, entries]) => {
    const held = holdPair(id, entries, choicesOf(entries, frameOf(id), data, DATE));
    return put(basket, held, terms) ?? basket;
  }, NO_BASKET);
}

const CHILD: Entries = { ...MYOPE, 'right.sphere': '-1', 'left.sphere': '-1', wearer: 'child' };

describe('the answer to a basket', () => {
  it('has the total, the lines and the verdicts of quote() for the same pairs', () => {
    const pairs = [
      ['sanderling', MYOPE],
      ['dunlin', { ...MYOPE, use: 'none' }],
      ['stint', CHILD],
    ] as const;
    const terms = { destination: 'CA', codes: 'FIRSTPAIR, nosuch' };
    const told = answer(basketOf(pairs, terms));
    const request = {
      date: DATE,
      language: 'en',
      destination: 'CA',
      codes: ['FIRSTPAIR', 'nosuch'],
      pairs: pairs.flatMap(
        ([id, entries]) => readEntries(entries, { frame: frameOf(id), data, date: DATE }).request.pairs,
      ),
    };
    expect(told.request).toEqual(request);
    const reply = quote(shop, request);
    if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
    expect(told.price).toEqual(reply.answer.price);
    const findings = told.pairs.flatMap((pair) => pair?.standing.findings ?? []);
    expect(findings).toEqual(reply.answer.pairs.flatMap((pair) => pair.findings));
  });

  it('splits its total into what belongs to each pair and what belongs to the order', () => {
    const { price, pairs } = answer(
      basketOf([
        ['sanderling', MYOPE],
        ['stint', CHILD],
      ]),
    );
    if (price === null) throw new Error('There is no price.');
    const sums = [...pairs.map((pair) => pair?.at ?? null), null].map((at) => linesOf(price, at).sumMinor);
    expect(sums.reduce((sum, one) => sum + one, 0)).toBe(price.total);
  });

  it('uses one of two offers that may not join, and says which', () => {
    const basket = basketOf(
      [
        ['sanderling', MYOPE],
        ['knot', MYOPE],
      ],
      { codes: 'FIRSTPAIR' },
    );
    const { price } = answer(basket);
    expect(price?.codes).toMatchObject([{ code: 'FIRSTPAIR', used: false }]);
    expect(price?.lines.some(({ source }) => source === 'promotions/harbour-november')).toBe(true);
    expect(price?.lines.some(({ source }) => source === 'promotions/first-pair')).toBe(false);
  });

  it('leaves each pair its verdict where the terms have no price', () => {
    const told = answer(basketOf([['sanderling', MYOPE]], { destination: 'CA', exemption: 'prescribed' }));
    expect(told.price).toBeNull();
    expect(told.faults).toMatchObject([{ field: 'exemption' }]);
    expect(told.pairs[0]?.standing.kind).toBe('makeable');
  });

  it('asks a pair without a prescription for it, and prices it all the same', () => {
    const told = answer(basketOf([['sanderling', {}]]));
    expect(told.pairs[0]?.standing.kind).toBe('needs');
    expect(told.price?.total).toBeGreaterThan(0);
  });

  it('leaves out a frame that the shop no longer has, and prices the others', () => {
    const two = basketOf([
      ['sanderling', MYOPE],
      ['knot', MYOPE],
    ]);
    const gone = answerBasket(two, (id) => (id === 'knot' ? null : known(id)), data, DATE);
    expect(gone.pairs[1]).toBeNull();
    expect(gone.price).toEqual(answer(basketOf([['sanderling', MYOPE]])).price);
  });

  it('tells of a choice that is no longer offered', () => {
    const [pair] = basketOf([['sanderling', MYOPE]]).pairs;
    if (pair === undefined) throw new Error('The basket is empty.');
    const old = { ...pair, entries: { ...pair.entries, coating: 'gold-leaf' } };
    expect(answer({ pairs: [old], terms: {} }).pairs[0]?.notHad).toEqual([
      { field: 'coating', value: 'gold-leaf' },
    ]);
  });

  it('of nothing is nothing', () => {
    expect(answer(NO_BASKET)).toEqual({ pairs: [], price: null, whole: null, faults: [], request: null });
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Gift } from '../../src/catalogue/promotion.ts';
import { cutOf, includedPrice } from '../../src/pricing/gift.ts';
import { goodsTotal, without } from '../../src/pricing/goods.ts';
import { lenses, offer, stock } from './offer.ts';

const sum = fc.integer({ min: 0, max: 1_000_000 });
const goods = fc.record({
  pairs: fc.array(fc.record({ frame: sum, lenses: sum }), { minLength: 1, maxLength: 4 }),
  shipping: sum,
});
const on = fc.constantFrom('frame', 'lenses', 'pair');
const included: Gift = {
  kind: 'included-lens',
  design: 'single',
  material: 'standard',
  tint: 'clear',
  coating: 'quiet',
};
const gifts: fc.Arbitrary<Gift> = fc.oneof(
  fc.record({ kind: fc.constant('percent' as const), on, sharePpm: fc.integer({ min: 0, max: 2_000_000 }) }),
  fc.record({
    kind: fc.constant('amount' as const),
    on,
    amountMinor: fc.integer({ min: 0, max: 5_000_000 }),
  }),
  fc.constantFrom<Gift>(included, { kind: 'shipping' }),
);
const scopes = fc.array(fc.boolean(), { minLength: 4, maxLength: 4 });

describe('law of a gift', () => {
  test('0 <= cut <= what is left, for every part of every pair and for shipping', () => {
    fc.assert(
      fc.property(goods, gifts, scopes, (before, gift, inScope) => {
        const cut = cutOf(offer, gift, before, inScope.slice(0, before.pairs.length), []);
        const left = without(before, cut);
        for (const { frame, lenses } of [...cut.pairs, ...left.pairs])
          expect(Math.min(frame, lenses)).toBeGreaterThanOrEqual(0);
        expect(Math.min(cut.shipping, left.shipping)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('nothing is taken off a pair out of scope, nor off a part that it does not name', () => {
    fc.assert(
      fc.property(goods, gifts, scopes, (before, gift, inScope) => {
        const cut = cutOf(offer, gift, before, inScope.slice(0, before.pairs.length), []);
        if (!inScope.slice(0, before.pairs.length).includes(true)) expect(cut.shipping).toBe(0);
        cut.pairs.forEach(({ frame, lenses }, index) => {
          if (!inScope[index]) expect([frame, lenses]).toEqual([0, 0]);
          if ('on' in gift && gift.on === 'frame') expect(lenses).toBe(0);
          if ('on' in gift && gift.on === 'lenses') expect(frame).toBe(0);
        });
      }),
    );
  });

  test('an amount is given once and whole, as far as there is something to take it off', () => {
    fc.assert(
      fc.property(goods, sum, (before, amountMinor) => {
        const cut = cutOf(
          offer,
          { kind: 'amount', on: 'pair', amountMinor },
          before,
          before.pairs.map(() => true),
          [],
        );
        expect(goodsTotal(cut)).toBe(Math.min(amountMinor, goodsTotal(before)));
      }),
    );
  });

  test('the credit for included lenses is at most their list price and at most what the lenses cost', () => {
    fc.assert(
      fc.property(goods, (before) => {
        const cut = cutOf(
          offer,
          included,
          before,
          before.pairs.map(() => true),
          [],
        );
        cut.pairs.forEach(({ lenses }, index) => {
          expect(lenses).toBe(Math.min(9500, before.pairs[index]?.lenses ?? 0));
        });
      }),
    );
  });
});

test('a list price below 0 by its own differences gives nothing to take', () => {
  const before = { pairs: [{ frame: -500, lenses: 1000 }], shipping: 0 };
  const cut = cutOf(offer, { kind: 'percent', on: 'pair', sharePpm: 1_000_000 }, before, [true], []);
  expect(cut.pairs).toEqual([{ frame: 0, lenses: 1000 }]);
});

test('included lenses that the shop does not have are an error which names them', () => {
  const gift = {
    kind: 'included-lens',
    design: 'single',
    material: 'glass',
    tint: null,
    coating: null,
  } as const;
  expect(() => includedPrice(offer, gift, null)).toThrow('material "glass"');
});

test('ready-made lenses of the included kind cost nothing, and their extras their full price', () => {
  const before = { pairs: [{ frame: 0, lenses: stock.priceMinor + 3500 }], shipping: 0 };
  const bare = { ...included, coating: null };
  const cut = cutOf(offer, bare, before, [true], [{ ...lenses, stock }]);
  expect(before.pairs[0]?.lenses).toBe(8000);
  expect(cut.pairs[0]?.lenses).toBe(stock.priceMinor);
});

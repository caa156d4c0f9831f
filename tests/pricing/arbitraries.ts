/** Generated orders: every price, gift, scope, date and code may meet every other. */
import fc from 'fast-check';
import type { Offer } from '../../src/catalogue/catalogue.ts';
import type { Gift, Promotion, PromotionScope } from '../../src/catalogue/promotion.ts';
import type { Asked, PricedPair } from '../../src/pricing/pair.ts';
import {
  coating,
  design,
  everywhere,
  frame,
  material,
  offer,
  otherPair,
  pair,
  shop,
  stock,
  tint,
} from './offer.ts';

const price = fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 60_000 }));
const on = fc.constantFrom('frame', 'lenses', 'pair');
const rate = fc.integer({ min: 0, max: 1_000_000 });

const gift: fc.Arbitrary<Gift> = fc.oneof(
  fc.record({ kind: fc.constant('percent' as const), on, sharePpm: rate }),
  fc.record({ kind: fc.constant('amount' as const), on, amountMinor: price }),
  fc.record({
    kind: fc.constant('included-lens' as const),
    design: fc.constant(design.id),
    material: fc.constant(material.id),
    tint: fc.constantFrom(tint.id, null),
    coating: fc.constantFrom(coating.id, null),
  }),
  fc.constant<Gift>({ kind: 'shipping' }),
);

const scope: fc.Arbitrary<PromotionScope> = fc.record({
  collections: fc.constantFrom(null, null, ['harbour'], ['marsh']),
  frames: fc.constantFrom(null, null, ['dunlin']),
  designs: fc.constantFrom(null, null, ['single']),
  materials: fc.constant(null),
  tints: fc.constantFrom(null, null, ['clear']),
  coatings: fc.constantFrom(null, null, ['quiet'], ['none']),
  leastGoodsMinor: fc.option(price, { nil: null }),
  leastPairs: fc.integer({ min: 1, max: 2 }),
});

const CODES = ['SPRING', 'harbour10'];

/** Promotions `p0`, `p1` and so on. */
export const promotions: fc.Arbitrary<Promotion[]> = fc
  .array(
    fc.record({
      starts: fc.constantFrom(null, null, null, '2026-11-01', '2026-11-25', '2026-11-26'),
      ends: fc.constantFrom(null, null, null, '2026-12-24', '2026-11-25', '2026-11-24'),
      code: fc.constantFrom(null, null, null, ...CODES),
      scope: fc.oneof({ weight: 2, arbitrary: fc.constant(everywhere) }, { weight: 1, arbitrary: scope }),
      gift,
      joins: fc.constantFrom<Promotion['joins']>('all', 'all', 'all', 'none', ['p0', 'p1', 'p2']),
    }),
    { maxLength: 5 },
  )
  .map((list) =>
    list.map((one, i) => ({
      ...one,
      id: `p${i}`,
      title: `Title ${i}`,
      sentence: `Sentence ${i}`,
      story: '',
    })),
  );

const parts = fc.subarray(['frame', 'lenses', 'shipping'] as const);

const shops: fc.Arbitrary<Offer['shop']> = fc
  .record({ amountMinor: price, rates: fc.array(fc.tuple(rate, parts), { maxLength: 2 }) })
  .map(({ amountMinor, rates }) => ({
    ...shop,
    shipping: [{ destinations: ['*'], label: 'Parcel', amountMinor }],
    tax: rates.map(([ratePpm, taxed]) => ({ destinations: ['*'], label: 'Tax', ratePpm, on: taxed })),
  }));

/** An offer with its prices; the pairs of `orders` are made of it. */
const offers = fc
  .record({
    frame: price,
    design: price,
    material: price,
    tint: price,
    coating: price,
    shop: shops,
    promotions,
  })
  .map((made) => ({
    ...offer,
    shop: made.shop,
    frames: [{ ...frame, priceMinor: made.frame + 1000 }],
    designs: [{ ...design, priceMinor: made.design }],
    materials: [{ ...material, priceMinor: made.material }],
    tints: [{ ...tint, priceMinor: made.tint }],
    coatings: [{ ...coating, priceMinor: made.coating }],
    promotions: made.promotions,
  }));

const shape = fc.record({
  own: fc.boolean(),
  bare: fc.boolean(),
  other: fc.boolean(),
  stockMinor: fc.option(price, { nil: null }),
  plain: fc.boolean(),
  strongestMeridianD: fc.integer({ min: -40, max: 40 }).map((quarters) => quarters / 4),
});

type Shape = typeof shape extends fc.Arbitrary<infer Made> ? Made : never;

/** A pair of the offer; only an own frame or only no lenses, never both. */
function made(of: Offer, { own, bare, other, stockMinor, plain, strongestMeridianD }: Shape): PricedPair {
  const [ownDesign, ownMaterial, ownFrame] = [of.designs[0], of.materials[0], of.frames[0]];
  const base = other ? otherPair : pair;
  if (!ownDesign || !ownMaterial || !ownFrame || !base.frame || !base.lenses) throw new Error('One of each.');
  const lenses = {
    ...base.lenses,
    design: ownDesign,
    material: ownMaterial,
    tint: plain ? null : (of.tints[0] ?? null),
    coating: plain ? null : (of.coatings[0] ?? null),
    stock: stockMinor === null ? null : { ...stock, priceMinor: stockMinor },
    strongestMeridianD,
  };
  return {
    frame: own ? null : { ...base.frame, frame: ownFrame },
    lenses: bare && !own ? null : lenses,
  };
}

export interface Order {
  readonly offer: Offer;
  readonly pairs: readonly PricedPair[];
  readonly asked: Asked;
}

export const orders: fc.Arbitrary<Order> = fc
  .tuple(offers, fc.array(shape, { minLength: 1, maxLength: 3 }), fc.subarray([...CODES, 'UNKNOWN']))
  .map(([of, shapes, codes]) => ({
    offer: of,
    pairs: shapes.map((one) => made(of, one)),
    asked: { date: '2026-11-25', destination: 'US-ME', taxExemption: null, codes },
  }));

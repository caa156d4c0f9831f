import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Offer } from '../../src/catalogue/catalogue.ts';
import type { Gift, Promotion } from '../../src/catalogue/promotion.ts';
import type { Asked, PricedPair } from '../../src/pricing/pair.ts';
import { priceOrder, pricer } from '../../src/pricing/priceOrder.ts';
import { orders } from './arbitraries.ts';
import { asked, everywhere, frame, lenses, offer, otherPair, pair, promotion, shop, stock } from './offer.ts';
import { figures, priced } from './validate.ts';

const tenOff: Gift = { kind: 'percent', on: 'frame', sharePpm: 100_000 };
const basicLens: Gift = {
  kind: 'included-lens',
  design: 'single',
  material: 'standard',
  tint: null,
  coating: null,
};

function order(
  promotions: readonly Promotion[] = [],
  pairs: readonly PricedPair[] = [pair],
  changed: Partial<Asked> = {},
  currency: Partial<Offer['shop']> = {},
) {
  return {
    offer: { ...offer, shop: { ...shop, ...currency }, promotions },
    pairs,
    asked: { ...asked, ...changed },
  };
}

/** The pair with its frame, lens design and coating at other prices. */
function at(frameMinor: number, designMinor: number, coatingMinor: number): PricedPair {
  if (!pair.frame || !pair.lenses?.coating) throw new Error('The pair has all of them.');
  return {
    frame: { ...pair.frame, frame: { ...frame, priceMinor: frameMinor } },
    lenses: {
      ...pair.lenses,
      design: { ...pair.lenses.design, priceMinor: designMinor },
      coating: { ...pair.lenses.coating, priceMinor: coatingMinor },
    },
  };
}

test('a pair is told line by line, and adds up to what is paid', () => {
  const { lines, totalMinor } = priced(order([promotion('a', tenOff)]));
  // Tax: 5.5 % of 149.00 - 14.90 + 60.00 + 35.00 = 229.10 is 12.6005. Total: 229.10 + 6.50 + 12.60.
  expect(lines.map(({ label, amount, source }) => `${label} | ${amount} | ${source}`)).toMatchInlineSnapshot(`
    [
      "Frame Dunlin | 14900 | frames/dunlin",
      "Lens design: Single vision | 6000 | lenses/designs/single",
      "Lens material: Standard plastic 1.50 | 0 | lenses/materials/standard",
      "Tint: Clear | 0 | lenses/tints/clear",
      "Coating: Anti-reflective | 3500 | lenses/coatings/quiet",
      "Sentence a | -1490 | promotions/a",
      "Parcel in Maine | 650 | shop",
      "Maine sales tax, 5.5% of $229.10 | 1260 | shop",
    ]
  `);
  expect(totalMinor).toBe(24820);
});

describe('orders worked by hand', () => {
  test('in a currency without decimals', () => {
    // 18950 + 9000 + 4500 = 32450; 15 % is 4867.5, so 4868 off; 10 % of 27582 + 800 is 2838.2.
    const promotions = [promotion('a', { kind: 'percent', on: 'pair', sharePpm: 150_000 })];
    const money = { currency: 'JPY', currencyDigits: 0 };
    const rates = {
      shipping: [{ destinations: ['JP'], label: 'Parcel', amountMinor: 800 }],
      tax: [
        {
          destinations: ['JP'],
          label: 'Consumption tax',
          ratePpm: 100_000,
          on: ['frame', 'lenses', 'shipping'],
        },
      ],
    } as const;
    const result = priced(
      order(promotions, [at(18950, 9000, 4500)], { destination: 'JP' }, { ...money, ...rates }),
    );
    expect(figures(result).slice(-3)).toEqual(['promotion 0 -4868', 'shipping order 800', 'tax order 2838']);
    expect(result.lines.at(-1)?.label).toBe('Consumption tax, 10% of ¥28,382');
    expect(result).toMatchObject({ currency: 'JPY', digits: 0, totalMinor: 31220 });
  });

  test('in a currency with three decimals', () => {
    // 45.755 + 22.500 + 7.250 - 5.000 = 70.505; 5 % is 3.52525; with 2.000 for shipping 76.030.
    const promotions = [promotion('a', { kind: 'amount', on: 'lenses', amountMinor: 5000 })];
    const money = { currency: 'KWD', currencyDigits: 3 };
    const rates = {
      shipping: [{ destinations: ['*'], label: 'Parcel', amountMinor: 2000 }],
      tax: [{ destinations: ['*'], label: 'Tax', ratePpm: 50_000, on: ['frame', 'lenses'] }],
    } as const;
    const result = priced(
      order(promotions, [at(45755, 22500, 7250)], { destination: 'KW' }, { ...money, ...rates }),
    );
    expect(figures(result).slice(-3)).toEqual(['promotion 0 -5000', 'shipping order 2000', 'tax order 3525']);
    expect(result).toMatchObject({ currency: 'KWD', digits: 3, totalMinor: 76030 });
  });

  test('with basic lenses included, dearer ones pay the difference', () => {
    // 60.00 of single vision in standard plastic is included; the coating's 35.00 remains. 5.5 % of 184.00 is 10.12.
    const result = priced(order([promotion('a', basicLens)]));
    expect(figures(result).slice(-3)).toEqual(['promotion 0 -6000', 'shipping order 650', 'tax order 1012']);
    expect(result.totalMinor).toBe(14900 + 3500 + 650 + 1012);
  });

  test('with basic lenses included, cheaper ones cost nothing and give nothing back', () => {
    const ready = { ...pair, lenses: { ...lenses, stock, coating: null } };
    // Ready-made lenses at 45.00. 5.5 % of 149.00 is 8.195.
    expect(figures(priced(order([promotion('a', basicLens)], [ready]))).slice(-3)).toEqual([
      'promotion 0 -4500',
      'shipping order 650',
      'tax order 820',
    ]);
  });

  test('with a sum off two pairs, to the last cent', () => {
    const ready = { ...otherPair, lenses: { ...lenses, stock } };
    // Lenses 95.00 and 45.00 + 35.00: 20.00 splits into 10.857 and 9.143. Goods 244.00 + 231.00 - 20.00 = 455.00,
    // 5.5 % is 25.025.
    const result = priced(
      order([promotion('a', { kind: 'amount', on: 'lenses', amountMinor: 2000 })], [pair, ready]),
    );
    expect(figures(result).slice(-4)).toEqual([
      'promotion 0 -1086',
      'promotion 1 -914',
      'shipping order 650',
      'tax order 2503',
    ]);
    expect(result.totalMinor).toBe(45500 + 650 + 2503);
  });

  test('with free shipping above a sum, judged before other promotions', () => {
    const free = promotion('b', { kind: 'shipping' }, { scope: { ...everywhere, leastGoodsMinor: 24400 } });
    const result = priced(order([promotion('a', tenOff), free], [pair]));
    expect(figures(result).slice(-4)).toEqual([
      'promotion 0 -1490',
      'shipping order 650',
      'promotion order -650',
      'tax order 1260',
    ]);
    expect(result.totalMinor).toBe(22910 + 1260);
  });

  test('with two percentages, the second of what the first has left', () => {
    // 149.00 less 10 % is 134.10; 20 % of that is 26.82.
    const second = promotion('b', { kind: 'percent', on: 'frame', sharePpm: 200_000 });
    const result = priced(order([promotion('a', tenOff), second]));
    expect(figures(result).slice(5, 7)).toEqual(['promotion 0 -1490', 'promotion 0 -2682']);
  });

  test("of lenses for the shopper's own frame, in a place without tax", () => {
    // 60.00 + 35.00 + 9.50.
    const result = priced(
      order([promotion('a', tenOff)], [{ ...pair, frame: null }], { destination: 'us-nh' }),
    );
    expect(figures(result)).toEqual([
      'lenses 0 6000',
      'lenses 0 0',
      'option 0 0',
      'option 0 3500',
      'shipping order 950',
      'tax order 0',
    ]);
    expect(result.promotions).toEqual([
      { id: 'a', used: false, why: 'price.why.nothing-left', figures: { title: 'Title a' } },
    ]);
  });

  test('with an exemption, whose reason is quoted', () => {
    const result = priced(order([], [pair], { taxExemption: 'resale' }));
    expect(result.lines.at(-1)).toEqual({
      kind: 'tax',
      pair: null,
      label: 'Resale, no tax added: bought to be sold again',
      amount: 0,
      source: 'shop',
    });
    expect(result.totalMinor).toBe(24400 + 650);
  });
});

describe('law of every order', () => {
  test('total = sum(lines), in whole minor units and never below 0', () => {
    fc.assert(fc.property(orders, (order) => void priced(order)));
  });

  test('price(order) = price(order): asking again changes nothing', () => {
    fc.assert(
      fc.property(orders, (order) => {
        const before = JSON.stringify(order);
        expect(priced(order)).toEqual(priced(order));
        expect(JSON.stringify(order)).toBe(before);
      }),
    );
  });

  test('the total without labels is the total with them', () => {
    fc.assert(
      fc.property(orders, ({ offer, pairs, asked }) => {
        const found = pricer(offer, asked);
        if (!found.ok) throw new Error('refused');
        expect(found.totalMinor(pairs)).toBe(found.order(pairs).totalMinor);
      }),
    );
  });

  test('no pair is ever below 0 after its promotions', () => {
    fc.assert(
      fc.property(orders, (order) => {
        const { lines } = priced(order);
        order.pairs.forEach((_, index) => {
          const own = lines.filter(({ pair }) => pair === index);
          expect(own.reduce((sum, { amount }) => sum + amount, 0)).toBeGreaterThanOrEqual(0);
        });
      }),
    );
  });

  test('the list price of two orders together is the sum of theirs', () => {
    fc.assert(
      fc.property(orders, (order) => {
        const plain = { ...order, offer: { ...order.offer, promotions: [] } };
        const goods = ({ pairs }: typeof order): number =>
          priced({ ...plain, pairs })
            .lines.filter(({ pair }) => pair !== null)
            .reduce((sum, { amount }) => sum + amount, 0);
        const apart = order.pairs.map((pair) => goods({ ...plain, pairs: [pair] }));
        expect(goods(plain)).toBe(apart.reduce((sum, amount) => sum + amount, 0));
      }),
    );
  });

  test('a place without a rate is refused, whatever is ordered', () => {
    fc.assert(
      fc.property(orders, ({ offer, pairs, asked }) => {
        const home = offer.shop.shipping.map((rate) => ({ ...rate, destinations: ['US'] }));
        const reply = priceOrder({ ...offer, shop: { ...offer.shop, shipping: home } }, pairs, {
          ...asked,
          destination: 'DE',
        });
        expect(reply.ok).toBe(false);
      }),
    );
  });
});

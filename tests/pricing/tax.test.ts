import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { TaxRate } from '../../src/catalogue/shop.ts';
import { taxCharges } from '../../src/pricing/tax.ts';
import { orders } from './arbitraries.ts';
import { shop } from './offer.ts';
import { priced } from './validate.ts';

const sum = fc.integer({ min: 0, max: 1_000_000 });
const goods = fc.record({
  pairs: fc.array(fc.record({ frame: sum, lenses: sum }), { minLength: 1, maxLength: 4 }),
  shipping: sum,
});
const PARTS = ['frame', 'lenses', 'shipping'] as const;

function taxes(rates: readonly Pick<TaxRate, 'ratePpm' | 'on'>[], left: Parameters<typeof taxCharges>[1]) {
  const [shipping] = shop.shipping;
  if (!shipping) throw new Error('The shop sends somewhere.');
  const named = rates.map((rate) => ({ ...rate, destinations: ['*'], label: 'Tax' }));
  return taxCharges({ shipping, taxes: named, exemption: null, candidates: [] }, left).map(
    (c) => c.amountMinor,
  );
}

describe('tax', () => {
  const left = {
    pairs: [
      { frame: 13410, lenses: 9500 },
      { frame: 100, lenses: 50 },
    ],
    shipping: 650,
  };

  test.each([
    // 5.5 % of 135.10 is 7.4305, of 95.50 is 5.2525, of 6.50 is 0.3575; of all 237.10 it is 13.0405.
    [['frame'], 743],
    [['lenses'], 525],
    [['shipping'], 36],
    [['frame', 'lenses', 'shipping'], 1304],
    [['frame', 'frame'], 743],
    [[], 0],
  ] as const)('on %j is %i', (on, amount) => {
    expect(taxes([{ ratePpm: 55_000, on }], left)).toEqual([amount]);
  });

  test('by two rates is two lines, each on its own base', () => {
    // The Canadian federal and Quebec rates (from memory), both on the price before tax: 5 % and 9.975 % of 230.60.
    const on = ['frame', 'lenses'] as const;
    expect(
      taxes(
        [
          { ratePpm: 50_000, on },
          { ratePpm: 99_750, on },
        ],
        left,
      ),
    ).toEqual([1153, 2300]);
  });

  test('law: 2 |tax - rate * base| <= 1 minor unit', () => {
    const parts = fc.subarray([...PARTS]);
    fc.assert(
      fc.property(goods, fc.integer({ min: 0, max: 1_000_000 }), parts, (order, ratePpm, on) => {
        const [amount = Number.NaN] = taxes([{ ratePpm, on }], order);
        const base = on.reduce((whole, part) => {
          const own =
            part === 'shipping' ? order.shipping : order.pairs.reduce((s, pair) => s + pair[part], 0);
          return whole + own;
        }, 0);
        expect(2 * Math.abs(amount * 1_000_000 - base * ratePpm)).toBeLessThanOrEqual(1_000_000);
      }),
    );
  });
});

describe('law of tax in an order', () => {
  test('an exemption leaves every other line and makes tax one line of 0', () => {
    fc.assert(
      fc.property(orders, (order) => {
        const exempt = priced({ ...order, asked: { ...order.asked, taxExemption: 'resale' } });
        const untaxed = priced(order).lines.filter(({ kind }) => kind !== 'tax');
        expect(exempt.lines.slice(0, -1)).toEqual(untaxed);
        expect(exempt.lines.at(-1)).toMatchObject({ kind: 'tax', amount: 0 });
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { priceOrder, pricer } from '../../src/pricing/priceOrder.ts';
import { joins } from '../../src/pricing/promotions.ts';
import { orders, promotions } from './arbitraries.ts';
import { promotion } from './offer.ts';
import { priced } from './validate.ts';

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
});

describe('law of codes', () => {
  test('their order, capitals, outer spaces and repetition do not matter', () => {
    const spelt = (code: string, how: number): string =>
      [code, code.toUpperCase(), ` ${code.toLowerCase()}\t`][how % 3] ?? code;
    fc.assert(
      fc.property(orders, fc.nat(), (order, how) => {
        const { codes } = order.asked;
        const respelt = [...codes, ...codes].reverse().map((code, i) => spelt(code, how + i));
        const again = priced({ ...order, asked: { ...order.asked, codes: respelt } });
        const { lines, codes: told } = priced(order);
        expect(again.lines).toEqual(lines);
        const uses = (list: typeof told) => list.map(({ code, used }) => [code.toLowerCase(), used]).sort();
        expect(uses(again.codes)).toEqual(uses(told));
      }),
    );
  });

  test('each code that was typed is answered, and an unknown one changes no line', () => {
    fc.assert(
      fc.property(orders, (order) => {
        const without = { ...order.asked, codes: order.asked.codes.filter((code) => code !== 'UNKNOWN') };
        const { codes, lines } = priced(order);
        expect(codes.map(({ code }) => code)).toEqual(order.asked.codes);
        expect(priced({ ...order, asked: without }).lines).toEqual(lines);
      }),
    );
  });
});

describe('law of promotions', () => {
  test('one that is not used changes nothing: taking all such away leaves the same lines', () => {
    fc.assert(
      fc.property(orders, (order) => {
        const { lines, promotions: told } = priced(order);
        const used = new Set(told.filter(({ used: taken }) => taken).map(({ id }) => id));
        const kept = order.offer.promotions.filter(({ id }) => used.has(id));
        expect(priced({ ...order, offer: { ...order.offer, promotions: kept } }).lines).toEqual(lines);
      }),
    );
  });

  test('one that joins none, declared last, leaves an order with another promotion as it is', () => {
    const last = promotion('last', { kind: 'percent', on: 'pair', sharePpm: 500_000 }, { joins: 'none' });
    fc.assert(
      fc.property(orders, (order) => {
        const before = priced(order);
        const added = [...order.offer.promotions, last];
        const after = priced({ ...order, offer: { ...order.offer, promotions: added } });
        if (before.promotions.some(({ used }) => used)) expect(after.lines).toEqual(before.lines);
        else expect(after.totalMinor).toBeLessThanOrEqual(before.totalMinor);
      }),
    );
  });

  test('all that are used accept each other', () => {
    fc.assert(
      fc.property(orders, (order) => {
        const ids = priced(order)
          .promotions.filter(({ used }) => used)
          .map(({ id }) => id);
        const used = order.offer.promotions.filter(({ id }) => ids.includes(id));
        for (const one of used)
          for (const other of used) if (one !== other) expect(joins(one, other)).toBe(true);
      }),
    );
  });

  test('joins(a, b) = joins(b, a)', () => {
    fc.assert(
      fc.property(promotions, (list) => {
        for (const one of list) for (const other of list) expect(joins(one, other)).toBe(joins(other, one));
      }),
    );
  });

  test('none makes an order dearer', () => {
    fc.assert(
      fc.property(orders, (order) => {
        const plain = { ...order, offer: { ...order.offer, promotions: [] } };
        expect(priced(order).totalMinor).toBeLessThanOrEqual(priced(plain).totalMinor);
      }),
    );
  });
});

describe('law of tax', () => {
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

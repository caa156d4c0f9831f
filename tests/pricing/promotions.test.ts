import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { civilDateAt } from '../../src/catalogue/civilDate.ts';
import type { Promotion } from '../../src/catalogue/promotion.ts';
import type { PricedPair } from '../../src/pricing/pair.ts';
import { joins } from '../../src/pricing/promotions.ts';
import { orders, promotions } from './arbitraries.ts';
import { asked, everywhere, offer, pair, promotion } from './offer.ts';
import { priced } from './validate.ts';

const half = { kind: 'percent', on: 'pair', sharePpm: 500_000 } as const;

/** What became of each promotion. */
function told(promotions: readonly Promotion[], changed = {}, pairs: readonly PricedPair[] = [pair]) {
  return priced({ offer: { ...offer, promotions }, pairs, asked: { ...asked, ...changed } }).promotions;
}

const reasons = (...args: Parameters<typeof told>) =>
  told(...args).map(({ why }) => why.replace('price.why.', ''));

describe('a promotion', () => {
  test.each([
    ['2026-11-26', null, 'not-yet'],
    ['2026-11-25', null, 'used'],
    ['2026-11-25', '2026-11-25', 'used'],
    [null, '2026-11-25', 'used'],
    [null, '2026-11-24', 'over'],
  ])('from %s to %s on 2026-11-25 is %s', (starts, ends, why) => {
    expect(reasons([promotion('a', half, { starts, ends })])).toEqual([why]);
  });

  // It begins with its first day and ends with its last in the shop's own calendar.
  test.each([
    ['America/New_York', '2026-11-25T04:59:59.999Z', 'not-yet'],
    ['America/New_York', '2026-11-25T05:00:00.000Z', 'used'],
    ['America/New_York', '2026-11-26T04:59:59.999Z', 'used'],
    ['America/New_York', '2026-11-26T05:00:00.000Z', 'over'],
    ['Asia/Kathmandu', '2026-11-24T18:14:59.999Z', 'not-yet'],
    ['Asia/Kathmandu', '2026-11-24T18:15:00.000Z', 'used'],
    ['Pacific/Auckland', '2026-11-25T10:59:59.999Z', 'used'],
    ['Pacific/Auckland', '2026-11-25T11:00:00.000Z', 'over'],
  ])('of one day in %s is at %s %s', (zone, instant, why) => {
    const day = promotion('a', half, { starts: '2026-11-25', ends: '2026-11-25' });
    expect(reasons([day], { date: civilDateAt(Date.parse(instant), zone) })).toEqual([why]);
  });

  test('for another collection is not used', () => {
    const scope = { ...everywhere, collections: ['marsh'] };
    expect(reasons([promotion('a', half, { scope })])).toEqual(['out-of-scope']);
  });

  test('for two pairs needs two, in scope or not', () => {
    const scope = { ...everywhere, leastPairs: 2, collections: ['harbour'] };
    const list = [promotion('a', half, { scope })];
    expect(told(list)[0]).toMatchObject({ why: 'price.why.least-pairs', figures: { pairs: 2 } });
    expect(reasons(list, {}, [pair, { ...pair, frame: null }])).toEqual(['used']);
  });

  test('from a sum on tells what is missing', () => {
    const scope = { ...everywhere, leastGoodsMinor: 24401 };
    expect(told([promotion('a', half, { scope })])[0]).toEqual({
      id: 'a',
      used: false,
      why: 'price.why.least-goods',
      figures: { title: 'Title a', least: '$244.01', missing: '$0.01' },
    });
  });

  test('with a code waits until it is typed', () => {
    const list = [promotion('a', half, { code: 'Spring' })];
    expect(told(list)).toEqual([]);
    expect(reasons(list, { codes: [' sPRING '] })).toEqual(['used']);
  });

  test('gives what is left when it is 100 %, and then nothing is left for the next', () => {
    const all = { ...half, sharePpm: 1_000_000 };
    expect(reasons([promotion('a', all), promotion('b', half)])).toEqual(['used', 'nothing-left']);
  });

  test('that takes nothing off keeps no other away', () => {
    const nothing = promotion('a', { kind: 'amount', on: 'pair', amountMinor: 0 }, { joins: 'none' });
    expect(reasons([nothing, promotion('b', half)])).toEqual(['nothing-left', 'used']);
  });
});

describe('promotions together', () => {
  test.each([
    ['all', 'all', true],
    ['all', 'none', false],
    ['none', 'all', false],
    [['b'], ['a'], true],
    [['b'], 'all', true],
    [['b'], ['c'], false],
    [['c'], 'all', false],
    [[], 'all', false],
  ] as const)('joining %j and %j: %s', (one, other, together) => {
    const list = [promotion('a', half, { joins: one }), promotion('b', half, { joins: other })];
    expect(reasons(list)).toEqual(['used', together ? 'used' : 'not-together']);
  });

  test('are tried in declared order, so the first one stays and is named', () => {
    const list = ['b', 'a'].map((id) => promotion(id, half, { joins: 'none' }));
    expect(told(list).map(({ id, used }) => [id, used])).toEqual([
      ['b', true],
      ['a', false],
    ]);
    expect(told(list)[1]?.figures).toEqual({ title: 'Title a', other: 'Title b' });
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

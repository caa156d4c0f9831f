import { describe, expect, it } from 'vitest';
import { say } from '../../src/catalogue/words.ts';
import type { OrderDraft } from '../../src/order/makeOrder.ts';
import { LACKS, missingOf } from '../../src/order/missing.ts';
import { draftOf, shop } from './orders.ts';

const whole = draftOf();
const lacking = (changed: Partial<OrderDraft>) => missingOf(shop, { ...whole, ...changed });

describe('a draft', () => {
  it('lacks nothing when it is whole', () => {
    expect(missingOf(shop, whole)).toEqual([]);
  });

  it.each<[string, Partial<OrderDraft>, ReturnType<typeof missingOf>]>([
    ['a name of spaces', { buyer: { ...whole.buyer, name: ' \u200b\n' } }, [{ code: 'name', of: null }]],
    [
      'an address of empty lines',
      { buyer: { ...whole.buyer, lines: ['', ' '] } },
      [{ code: 'address', of: null }],
    ],
    [
      'no way to reach the buyer',
      { buyer: { ...whole.buyer, email: '', phone: '' } },
      [{ code: 'contact', of: null }],
    ],
    [
      'nobody to wear it',
      { pairs: whole.pairs.map((pair) => ({ ...pair, wearer: '' })) },
      [{ code: 'wearer', of: 0 }],
    ],
    [
      'an unread caution',
      { pairs: whole.pairs.map((pair) => ({ ...pair, confirmed: [] })) },
      [{ code: 'caution', of: 0 }],
    ],
    [
      'a consent not given',
      { accepted: ['prescription', 'cautions'] },
      [{ code: 'consent', of: 'health-data' }],
    ],
    ['no way to pay', { payment: null }, [{ code: 'payment', of: null }]],
    ['a way to pay that the shop does not have', { payment: 'barter' }, [{ code: 'payment', of: null }]],
    [
      'a pair that cannot be made',
      { answer: { ...whole.answer, verdict: 'refused' } },
      [{ code: 'refused', of: null }],
    ],
  ])('lacks something with %s', (_, changed, lacks) => {
    expect(lacking(changed)).toEqual(lacks);
  });

  it('is told each lack in the shop’s words', () => {
    for (const code of LACKS) expect(say(shop.words, `order.missing.${code}`)).not.toBe('');
  });
});

import { describe, expect, it } from 'vitest';
import { say } from '../../src/catalogue/words.ts';
import { LACKS, missingOf, type Unfinished } from '../../src/order/missing.ts';
import { draftOf, shop } from './orders.ts';

const draft = draftOf();
const whole: Unfinished = {
  ...draft,
  pairs: draft.pairs.map((pair) => ({ ...pair, waits: null })),
  gone: [],
};
const lacking = (changed: Partial<Unfinished>) => missingOf(shop, { ...whole, ...changed });
const eachPair = (changed: Partial<Unfinished['pairs'][number]>) => ({
  pairs: whole.pairs.map((pair) => ({ ...pair, ...changed })),
});
const blank = { written: '', prescriber: { name: ' ', place: 'Merriwick' }, attachments: [] };
const undated = {
  ...whole.request,
  pairs: whole.request.pairs.map((pair) => ({
    ...pair,
    prescription: pair.prescription && (({ issued: _, ...rest }) => rest)(pair.prescription),
  })),
};
const refused = {
  ...draft.answer,
  verdict: 'refused' as const,
  pairs: draft.answer.pairs.map((pair) => ({ ...pair, verdict: 'refused' as const })),
};

describe('a draft', () => {
  it('lacks nothing when it is whole', () => {
    expect(missingOf(shop, whole)).toEqual([]);
  });

  it.each<[string, Partial<Unfinished>]>([
    [
      'who prescribed, where a picture shows it',
      eachPair({
        prescription: {
          ...blank,
          attachments: [{ name: 'paper.png', type: 'image/png', base64: 'iVBORw==' }],
        },
      }),
    ],
    ['a prescription, where there is none', { request: undated, ...eachPair({ prescription: null }) }],
  ])('need not say %s', (_, changed) => {
    expect(lacking(changed)).toEqual([]);
  });

  it.each<[string, Partial<Unfinished>, ReturnType<typeof missingOf>]>([
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
    ['nobody to wear it', eachPair({ wearer: '' }), [{ code: 'wearer', of: 0 }]],
    [
      'nobody who prescribed, and no picture',
      eachPair({ prescription: blank }),
      [{ code: 'prescriber', of: 0 }],
    ],
    ['a prescription without its date', { request: undated }, [{ code: 'issued', of: 0 }]],
    ['nobody said to have measured', eachPair({ measuredBy: null }), [{ code: 'measurer', of: 0 }]],
    ['an unread caution', eachPair({ confirmed: [] }), [{ code: 'caution', of: 0 }]],
    ['an entry that cannot be read', eachPair({ waits: 'unread' }), [{ code: 'unread', of: 0 }]],
    ['a frame that is gone', { gone: ['dodo'] }, [{ code: 'gone', of: 'dodo' }]],
    ['terms without a price', { answer: null }, [{ code: 'price', of: null }]],
    [
      'a consent not given',
      { accepted: ['prescription', 'cautions'] },
      [{ code: 'consent', of: 'health-data' }],
    ],
    ['no way to pay', { payment: null }, [{ code: 'payment', of: null }]],
    ['a way to pay that the shop does not have', { payment: 'barter' }, [{ code: 'payment', of: null }]],
    ['a pair that cannot be made', { answer: refused }, [{ code: 'refused', of: 0 }]],
    [
      'a pair that still waits for an entry, and is refused for that alone',
      { answer: refused, ...eachPair({ waits: 'needs' }) },
      [{ code: 'needs', of: 0 }],
    ],
  ])('lacks something with %s', (_, changed, lacks) => {
    expect(lacking(changed)).toEqual(lacks);
  });

  it('tells of its lacks in the order of the form', () => {
    const [pair] = whole.pairs;
    if (pair === undefined) throw new Error('The draft has no pair.');
    const empty = lacking({
      ...eachPair({ wearer: '', prescription: blank, measuredBy: null, confirmed: [] }),
      request: undated,
      buyer: { name: '', lines: [], email: '', phone: '' },
      accepted: [],
      payment: null,
    });
    const places = empty.map(({ code }) => LACKS.indexOf(code));
    expect(places).toEqual([...places].sort((one, other) => one - other));
    expect(empty).toHaveLength(8 + shop.shop.order.consents.length + 1);
  });

  it('is told each lack in the shop’s words', () => {
    const slots = { frame: 'dodo' };
    for (const code of LACKS) expect(say(shop.words, `order.missing.${code}`, slots)).not.toBe('');
  });
});

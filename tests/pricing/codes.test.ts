import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codesTyped, sameCode } from '../../src/pricing/codes.ts';
import { orders } from './arbitraries.ts';
import { promotion } from './offer.ts';
import { priced } from './validate.ts';

const used = { key: 'price.why.used', slots: {} } as const;
const over = { key: 'price.why.over', slots: {} } as const;

describe('codes', () => {
  test('that are empty are left out, and repeated ones are told once, as first typed', () => {
    expect(codesTyped(['', ' Tide ', 'TIDE', '  ', 'rock'], []).map(({ code }) => code)).toEqual([
      'Tide',
      'rock',
    ]);
  });

  test('that no promotion has are said to be unknown', () => {
    expect(codesTyped(['tide'], [])).toEqual([
      { code: 'tide', used: false, why: { key: 'price.why.unknown-code', slots: { code: 'tide' } } },
    ]);
  });

  test('of two promotions are used when one of them is', () => {
    const gift = { kind: 'shipping' } as const;
    const considered = [
      { promotion: promotion('a', gift, { code: 'TIDE' }), used: false, why: over },
      { promotion: promotion('b', gift, { code: 'tide' }), used: true, why: used },
    ];
    expect(codesTyped(['Tide'], considered)).toEqual([{ code: 'Tide', used: true, why: used }]);
    expect(codesTyped(['Tide'], considered.slice(0, 1))).toEqual([{ code: 'Tide', used: false, why: over }]);
  });

  test('law: sameCode is reflexive and symmetric, and blind to outer spaces', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (one, other) => {
        expect(sameCode(one, one)).toBe(true);
        expect(sameCode(one, other)).toBe(sameCode(other, one));
        expect(sameCode(` ${one}\n`, one)).toBe(true);
      }),
    );
  });
});

describe('law of codes in an order', () => {
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

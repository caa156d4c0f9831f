import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moneyIn, percent } from '../../../src/catalogue/schema/money.ts';
import { parseWith } from '../../../src/catalogue/schema/parse.ts';
import { toDecimal } from '../../../src/money/decimal.ts';
import { printedAfter } from '../faultyShop.ts';

const frame = (price: string) => printedAfter('frames/dunlin.md', 'price: "149.00"', `price: ${price}`);

describe('a price', () => {
  it('without quotes is told to take them', () => {
    expect(frame('149.00')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:5:8 price: this is the wrong kind of value [wrong-type]
        5 | price: 149.00
          |        ^^^^^^
        expected: a price in USD with 2 digits after the point, in quotes, such as "149.00"
        found:    the number 149.00
        to do:    Put it in quotes: "149.00".

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('with too many decimals is refused, never rounded', () => {
    expect(frame('"149.005"')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:5:8 price: this price has too many decimals [too-many-decimals]
        5 | price: "149.005"
          |        ^^^^^^^^^
        expected: a price in USD with 2 digits after the point, in quotes, such as "149.00"
        found:    the text "149.005"
        to do:    Round it: "149.00" or "149.01".

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('with sign and comma is told what was meant', () => {
    expect(frame('"$149,00"')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:5:8 price: this is not a price [wrong-price]
        5 | price: "$149,00"
          |        ^^^^^^^^^
        expected: a price in USD with 2 digits after the point, in quotes, such as "149.00"
        found:    the text "$149,00"
        to do:    Write "149.00".

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it.each([
    ['149.0', 'Write "149.00".'],
    ['149', 'Write "149.00".'],
    ['1,5', 'Write "1.50".'],
    ['1234567890.00', 'Write digits and a point only.'],
    ['-0.00', 'Write it without a minus.'],
    ['$ 149,00', 'Write "149.00".'],
    ['149.00 USD', 'Write "149.00".'],
    ['12o,00', 'Write digits and a point only. A letter stands among the digits.'],
    ['12,oo', 'Write digits and a point only. A letter stands among the digits.'],
    ['free', 'Write digits and a point only.'],
  ])('has the digits of its currency: "%s" is told: %s', (price, hint) => {
    expect(frame(`"${price}"`)).toContain(`to do:    ${hint}`);
  });

  it('below 0 is refused', () => {
    expect(frame('"-5.00"')).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:5:8 price: this is not a price [wrong-price]
        5 | price: "-5.00"
          |        ^^^^^^^
        expected: a price in USD with 2 digits after the point, in quotes, such as "149.00"
        found:    the text "-5.00"
        to do:    Write it without a minus.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('with cents in a currency without them is refused', () => {
    const text = printedAfter('shop.yaml', 'currency: USD', 'currency: JPY');
    expect(text.split('\n\n')[0]).toMatchInlineSnapshot(`
      "
      content/frames/dunlin.md:5:8 price: this price has too many decimals [too-many-decimals]
        5 | price: "149.00"
          |        ^^^^^^^^
        expected: a price in JPY without a point, in quotes, such as "149"
        found:    the text "149.00"
        to do:    Write "149"."
    `);
  });

  it('law: every amount of 0, 2 and 3 digits is read back to the unit', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(0, 2, 3),
        fc.integer({ min: -999_999_999, max: 999_999_999 }),
        (digits, minor) => {
          const { price, difference } = moneyIn({ code: 'XXX', digits });
          const text = toDecimal(minor, digits);
          expect(parseWith(difference, text)).toEqual({ ok: true, value: minor });
          expect(parseWith(price, text).ok).toBe(minor >= 0);
        },
      ),
    );
  });
});

describe('a share', () => {
  it.each([
    ['0', 0],
    ['5.5', 55_000],
    ['33.3333', 333_333],
    ['100', 1_000_000],
  ])('of %s percent is %d parts per million', (text, ppm) => {
    expect(parseWith(percent(), text)).toEqual({ ok: true, value: ppm });
  });

  it.each(['-1', '100.0001', '5.55555', '5,5', '5.5 %', '', 'five'])('of %j is refused', (text) => {
    expect(parseWith(percent(), text).ok).toBe(false);
  });

  it.each([
    ['1.2%', 'Write "1.2".'],
    ['150', 'A share is at most "100".'],
    ['150 %', 'A share is at most "100".'],
    ['-5', 'Write it without a minus.'],
    ['five', 'Write digits and a point only, without the sign %.'],
  ])('of "%s" is told: %s', (text, hint) => {
    expect(printedAfter('shop.yaml', 'percent: "5.5"', `percent: "${text}"`)).toContain(`to do:    ${hint}`);
  });

  it('with a percent sign is told what to write', () => {
    expect(printedAfter('shop.yaml', 'percent: "5.5"', 'percent: "5,5 %"')).toMatchInlineSnapshot(`
      "
      content/shop.yaml:30:57 tax.0.percent: this value is not possible [wrong-value]
        30 |   - { destinations: [US-ME], label: Sales tax, percent: "5,5 %", on: [frame, lenses] }
           |                                                         ^^^^^^^
        expected: a share in percent from "0" to "100" with at most 4 decimals, in quotes, such as "5.5"
        found:    the text "5,5 %"
        to do:    Write "5.5".

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });
});

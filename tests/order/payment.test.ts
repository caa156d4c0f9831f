import { describe, expect, it } from 'vitest';
import { fillPayment } from '../../src/order/payment.ts';
import { shop } from './orders.ts';

const link = 'https://pay.example/{number}?amount={total}&for={number}';
const way = { id: 'page', label: 'Page', words: 'Pay {total} for {number}, {total} in all.', link };

describe('a way to pay', () => {
  it('reads as money in the words and as a plain decimal in the link', () => {
    expect(fillPayment(shop.shop, way, '482109375562', 123_456)).toEqual({
      id: 'page',
      label: 'Page',
      words: 'Pay $1,234.56 for 4821-0937-5562, $1,234.56 in all.',
      link: 'https://pay.example/482109375562?amount=1234.56&for=482109375562',
    });
  });

  it('has no decimals where the currency has none', () => {
    const yen = { ...shop.shop, currency: 'JPY', currencyDigits: 0 };
    expect(fillPayment(yen, way, '482109375562', 20_800).link).toContain('amount=20800&');
  });
});

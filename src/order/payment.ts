/** The chosen way to pay: the shop's own words and link, with number and total filled in. */
import type { Payment } from '../catalogue/orderTerms.ts';
import type { Shop } from '../catalogue/shop.ts';
import { toDecimal } from '../money/decimal.ts';
import { formatMoney } from '../money/format.ts';
import { showNumber } from './number.ts';
import type { OrderPayment } from './order.ts';

/** What of a shop says how its amounts are written. */
export type Paid = Pick<Shop, 'currency' | 'currencyDigits' | 'language'>;

/**
 * A way to pay for an order. In the words the total is written as money of the shop's language; in the link it is a
 * plain decimal such as 208.90, and the number has digits alone. `totalMinor` in minor units.
 */
export function fillPayment(shop: Paid, payment: Payment, number: string, totalMinor: number): OrderPayment {
  const { currency, currencyDigits, language } = shop;
  const money = formatMoney(totalMinor, currency, currencyDigits, language);
  const fill = (text: string, total: string, shown: string) =>
    text.replace(/\{(total|number)\}/g, (_, slot) => (slot === 'total' ? total : shown));
  return {
    id: payment.id,
    label: payment.label,
    words: fill(payment.words, money, showNumber(number)),
    link: payment.link && fill(payment.link, toDecimal(totalMinor, currencyDigits), number),
  };
}

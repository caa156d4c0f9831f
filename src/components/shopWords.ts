/** What the pages say: words, prices and dates of this shop in its language. */

import { catalogue } from 'virtual:bevelbook/catalogue';
import { civilDateAt } from '../catalogue/civilDate.ts';
import { type Slots, say } from '../catalogue/words.ts';
import { formatMoney } from '../money/format.ts';

const { shop, words } = catalogue;

/** A label or sentence of the pages; `key` without its leading `page.`. */
export function t(key: string, slots: Slots = {}): string {
  return say(words, `page.${key}`, slots);
}

/** An amount of minor units in the shop's currency. */
export function money(minor: number): string {
  return formatMoney(minor, shop.currency, shop.currencyDigits, shop.language);
}

/** A number as the shop's language writes it, with at most `digits` decimals. */
export function figure(value: number, digits = 2): string {
  return new Intl.NumberFormat(shop.language, { maximumFractionDigits: digits }).format(value);
}

/** A power in D as the trade writes it: always signed but for plano, two decimals. */
export function power(valueD: number): string {
  const exact = { minimumFractionDigits: 2, maximumFractionDigits: 2, signDisplay: 'exceptZero' } as const;
  return new Intl.NumberFormat(shop.language, exact).format(valueD);
}

/** A share from 0 to 1 as a percentage with at most `digits` decimals. */
export function percent(share: number, digits = 1): string {
  return new Intl.NumberFormat(shop.language, { style: 'percent', maximumFractionDigits: digits }).format(
    share,
  );
}

/** A civil date `YYYY-MM-DD` in words. */
export function day(civilDate: string): string {
  const format = new Intl.DateTimeFormat(shop.language, { dateStyle: 'long', timeZone: 'UTC' });
  return format.format(new Date(`${civilDate}T00:00:00Z`));
}

/** Names in a row, as the language joins them. */
export function list(names: readonly string[]): string {
  return new Intl.ListFormat(shop.language, { type: 'conjunction' }).format(names);
}

/**
 * The civil date that the pages are made for: BEVELBOOK_DATE where it is set, so that a build can be repeated,
 * else today in the shop's time zone.
 */
export const builtOn: string = process.env['BEVELBOOK_DATE'] ?? civilDateAt(Date.now(), shop.timeZone);

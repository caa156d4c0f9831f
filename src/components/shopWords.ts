/** What the pages say: texts, prices, figures, dates and addresses of this shop in the language of a page. */

import { catalogue as own, translations } from 'virtual:bevelbook/catalogue';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { civilDateAt } from '../catalogue/civilDate.ts';
import { languageSegment, pageHref } from '../catalogue/languages.ts';
import { type Slots, say } from '../catalogue/words.ts';
import { formatMoney } from '../money/format.ts';

export type ShopWords = ReturnType<typeof wordsOf>;

function wordsOf(catalogue: Catalogue) {
  const { shop, words } = catalogue;
  const { language, languages } = shop;
  // Making one takes longer than all that it ever writes on a page.
  const formats = new Map<string, Intl.NumberFormat>();
  const number = (options: Intl.NumberFormatOptions): Intl.NumberFormat => {
    const key = JSON.stringify(options);
    const format = formats.get(key) ?? new Intl.NumberFormat(language, options);
    formats.set(key, format);
    return format;
  };
  const dates = new Intl.DateTimeFormat(language, { dateStyle: 'long', timeZone: 'UTC' });
  const names = new Intl.ListFormat(language, { type: 'conjunction' });
  return {
    catalogue,
    /** First part of this language's addresses, as the page's parameter `lang`; undefined for the first language. */
    lang: languageSegment(language, languages),
    /** A label or sentence of the pages; `key` without its leading `page.`. */
    t: (key: string, slots: Slots = {}): string => say(words, `page.${key}`, slots),
    /** An amount of minor units in the shop's currency. */
    money: (minor: number): string => formatMoney(minor, shop.currency, shop.currencyDigits, language),
    /** A number with at most `digits` decimals. */
    figure: (value: number, digits = 2): string => number({ maximumFractionDigits: digits }).format(value),
    /** A number with exactly `digits` decimals. */
    fixed: (value: number, digits: number): string =>
      number({ minimumFractionDigits: digits, maximumFractionDigits: digits }).format(value),
    /** A power in D as the trade writes it: always signed but for plano, two decimals. */
    power: (valueD: number): string =>
      number({ minimumFractionDigits: 2, maximumFractionDigits: 2, signDisplay: 'exceptZero' }).format(
        valueD,
      ),
    /** A share from 0 to 1 as a percentage with at most `digits` decimals. */
    percent: (share: number, digits = 1): string =>
      number({ style: 'percent', maximumFractionDigits: digits }).format(share),
    /** A civil date `YYYY-MM-DD` in words. */
    day: (civilDate: string): string => dates.format(new Date(`${civilDate}T00:00:00Z`)),
    /** Names in a row, as the language joins them. */
    list: (all: readonly string[]): string => names.format(all),
    /** The address in this language of the page that the first language has at `path`, such as `/basket/`. */
    href: (path: string): string => pageHref(shop, path),
  };
}

/** The shop in each of its languages, its own first. */
export const spoken: readonly ShopWords[] = [own, ...translations].map(wordsOf);

/** The shop in the language of a page: `shopWords(Astro.params)`. Throws for a language that it does not have. */
export function shopWords({ lang }: Readonly<Record<string, string | undefined>>): ShopWords {
  const found = spoken.find((words) => words.lang === lang);
  if (found === undefined) throw new Error(`The shop has no pages at /${lang}/.`);
  return found;
}

/** Parameters of pages that every language has. */
export const languagePaths = () => spoken.map(({ lang }) => ({ params: { lang } }));

/**
 * The civil date that the pages are made for: BEVELBOOK_DATE where it is set, so that a build can be repeated,
 * else today in the shop's time zone.
 */
export const builtOn: string = process.env['BEVELBOOK_DATE'] ?? civilDateAt(Date.now(), own.shop.timeZone);

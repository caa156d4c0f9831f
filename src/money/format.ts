/**
 * Amounts as a reader of a language writes them. The formatter is handed a decimal string, so that no floating
 * number stands between the minor units and the page. Formatters are kept: making one costs more than a quote.
 */

import { toDecimal } from './decimal.ts';
import { checkMinor } from './minor.ts';

const kept = new Map<string, Intl.NumberFormat>();

function formatter(language: string, options: Intl.NumberFormatOptions): Intl.NumberFormat {
  const name = `${language} ${options.currency ?? options.style} ${options.minimumFractionDigits ?? ''}`;
  let found = kept.get(name);
  if (found === undefined) {
    found = new Intl.NumberFormat(language, options);
    kept.set(name, found);
  }
  return found;
}

/**
 * An amount with its currency, such as `$1,149.00` for 114900 in USD with 2 digits in `en`. Throws a RangeError
 * for no safe integer, and for a currency or language tag that is not well formed.
 */
export function formatMoney(minor: number, currency: string, digits: number, language: string): string {
  const exact = { minimumFractionDigits: digits, maximumFractionDigits: digits };
  const format = formatter(language, { style: 'currency', currency, ...exact });
  return format.format(toDecimal(checkMinor(minor), digits) as Intl.StringNumericLiteral);
}

/** A share of parts per million as a percentage of at most 4 decimals, such as `5.5%` for 55000 in `en`. */
export function formatPercent(sharePpm: number, language: string): string {
  const format = formatter(language, { style: 'percent', maximumFractionDigits: 4 });
  return format.format(toDecimal(checkMinor(sharePpm), 6) as Intl.StringNumericLiteral);
}

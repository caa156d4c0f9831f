/** Prices and rates: quoted decimal strings in the files, whole numbers afterwards. */
import * as z from 'zod/mini';
import { parseDecimal, toDecimal } from '../../money/decimal.ts';
import { expects } from './about.ts';
import { type MoneyFields, refuse } from './fields.ts';

/** What a shop's currency means for its prices. */
export interface Currency {
  /** ISO 4217 code. */
  readonly code: string;
  /** Digits after the point; null where the currency is not known, and then any number of them is read. */
  readonly digits: number | null;
}

/** A price of more figures before the point is a slip, and sums of such could leave the safe integers. */
const MOST_UNIT_FIGURES = 9;

function expectedPrice({ code, digits }: Currency, signed: boolean): string {
  const figures =
    digits === null ? '' : digits === 0 ? ' without a point' : ` with ${digits} digits after the point`;
  const sample = `149${digits === 0 ? '' : `.${'0'.repeat(digits ?? 2)}`}`;
  return `a price in ${code}${figures}, in quotes, such as "${signed ? '-' : ''}${sample}"`;
}

/** A letter beside or between figures may be one of them: `12o,00` may be 120 and is no slip for 12. */
const MISTYPED = /\p{L}[.,]?\d|\d[.,]?\p{L}|\d.*\p{L}.*\d/u;

/** `$ 149,00` was meant as `149.00`, `149` too; null where it cannot be told. */
function meantBy(value: string, digits: number, whole: boolean): string | null {
  if (MISTYPED.test(value)) return null;
  const plain = value.replace(/[^\d.,-]/g, '');
  const parsed = parseDecimal(plain, digits);
  const meant = parsed.ok ? plain : parsed.fault.meant;
  const amount = meant === null ? null : parseDecimal(meant, digits);
  return amount?.ok && whole ? toDecimal(amount.minor, digits) : meant;
}

/** The amounts below and above one with too many decimals. */
function neighbours(value: string, digits: number): string[] {
  const [units = '', fraction = ''] = value.split('.');
  const kept = Number(units.replace('-', '') + fraction.slice(0, digits).padEnd(digits, '0'));
  return [kept, kept + 1].map((minor) => toDecimal(value.startsWith('-') ? -minor : minor, digits));
}

/** Amounts with all the digits of the currency, none more. */
function amountForm(digits: number | null, signed: boolean): RegExp {
  const fraction = digits === 0 ? '' : digits === null ? '(?:\\.\\d{1,4})?' : `\\.\\d{${digits}}`;
  return new RegExp(`^${signed ? '-?' : ''}(?:0|[1-9]\\d{0,${MOST_UNIT_FIGURES - 1}})${fraction}$`);
}

/** An amount of the shop's currency in minor units; below 0 only where `signed`. */
function amount(currency: Currency, signed: boolean) {
  const expected = expectedPrice(currency, signed);
  const digits = currency.digits ?? 4;
  const form = amountForm(currency.digits, signed);
  const field = z.pipe(
    z.string({ error: expected }),
    z.transform((value, context) => {
      const parsed = parseDecimal(value, digits);
      if (parsed.ok && form.test(value)) return parsed.minor;
      const negative = value.startsWith('-') && !signed;
      const tooFine = !parsed.ok && parsed.fault.code === 'too-many-decimals';
      const meant = meantBy(value, digits, currency.digits !== null);
      refuse(context, value, {
        code: tooFine ? 'too-many-decimals' : 'wrong-price',
        expected,
        hint: negative
          ? 'Write it without a minus.'
          : meant !== null && form.test(meant)
            ? `Write "${meant}".`
            : tooFine
              ? `Round it: "${neighbours(value, digits).join('" or "')}".`
              : MISTYPED.test(value)
                ? 'Write digits and a point only. A letter stands among the digits.'
                : 'Write digits and a point only.',
      });
      return 0;
    }),
  );
  return expects(expected, field, { pattern: form.source });
}

/** Fields for prices in `currency`, whose values are minor units. */
export function moneyIn(currency: Currency): MoneyFields {
  return { price: amount(currency, false), difference: amount(currency, true) };
}

const PERCENT = 'a share in percent from "0" to "100" with at most 4 decimals, in quotes, such as "5.5"';

const SHARE = /^(?:100(?:\.0{1,4})?|(?:0|[1-9]\d?)(?:\.\d{1,4})?)$/;

function percentHint(value: string): string {
  const meant = meantBy(value, 4, false);
  if (meant === null) return 'Write digits and a point only, without the sign %.';
  if (meant.startsWith('-')) return 'Write it without a minus.';
  return SHARE.test(meant) ? `Write "${meant}".` : 'A share is at most "100".';
}

/** A share in percent, 0 to 100, as parts per million. */
export function percent() {
  const field = z.pipe(
    z.string({ error: PERCENT }),
    z.transform((value, context) => {
      const parsed = parseDecimal(value, 4);
      if (parsed.ok && SHARE.test(value)) return parsed.minor;
      refuse(context, value, { code: 'wrong-value', expected: PERCENT, hint: percentHint(value) });
      return 0;
    }),
  );
  return expects(PERCENT, field, { pattern: SHARE.source });
}

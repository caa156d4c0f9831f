/** Prices and rates: quoted decimal strings in the files, whole numbers afterwards. */
import * as z from 'zod/mini';
import { parseDecimal, toDecimal } from '../../money/decimal.ts';
import { type MoneyFields, refuse } from './fields.ts';

/** What a shop's currency means for its prices. */
export interface Currency {
  /** ISO 4217 code. */
  readonly code: string;
  /** Digits after the point; null where the currency is not known, and then any number of them is read. */
  readonly digits: number | null;
}

/** A price above this is a slip, and sums of more could leave the safe integers. In whole units. */
const MOST_UNITS = 1_000_000_000;

function expectedPrice({ code, digits }: Currency, signed: boolean): string {
  const figures =
    digits === null ? '' : digits === 0 ? ' without a point' : ` with ${digits} digits after the point`;
  const sample = `149${digits === 0 ? '' : `.${'0'.repeat(digits ?? 2)}`}`;
  return `a price in ${code}${figures}, in quotes, such as "${signed ? '-' : ''}${sample}"`;
}

/** `$ 149,00` was meant as `149.00`; null where it cannot be told. */
function meantBy(value: string, digits: number): string | null {
  const plain = value.replace(/[^\d.,-]/g, '');
  const parsed = parseDecimal(plain, digits);
  return parsed.ok ? plain : parsed.fault.meant;
}

/** The amounts below and above one with too many decimals. */
function neighbours(value: string, digits: number): string[] {
  const [units = '', fraction = ''] = value.split('.');
  const kept = Number(units.replace('-', '') + fraction.slice(0, digits).padEnd(digits, '0'));
  return [kept, kept + 1].map((minor) => toDecimal(value.startsWith('-') ? -minor : minor, digits));
}

/** An amount of the shop's currency in minor units; below 0 only where `signed`. */
function amount(currency: Currency, signed: boolean) {
  const expected = expectedPrice(currency, signed);
  const digits = currency.digits ?? 4;
  return z.pipe(
    z.string({ error: expected }),
    z.transform((value, context) => {
      const parsed = parseDecimal(value, digits);
      const negative = value.startsWith('-') && !signed;
      if (parsed.ok && !negative && Math.abs(parsed.minor) < MOST_UNITS * 10 ** digits) return parsed.minor;
      const tooFine = !parsed.ok && parsed.fault.code === 'too-many-decimals';
      const meant = negative ? null : meantBy(value, digits);
      refuse(context, value, {
        code: tooFine ? 'too-many-decimals' : 'wrong-price',
        expected,
        hint:
          meant !== null && !parsed.ok
            ? `Write "${meant}".`
            : tooFine
              ? `Round it: "${neighbours(value, digits).join('" or "')}".`
              : negative
                ? 'Write it without a minus.'
                : 'Write digits and a point only.',
      });
      return 0;
    }),
  );
}

/** Fields for prices in `currency`, whose values are minor units. */
export function moneyIn(currency: Currency): MoneyFields {
  return { price: amount(currency, false), difference: amount(currency, true) };
}

const PERCENT = 'a share in percent from "0" to "100" with at most 4 decimals, in quotes, such as "5.5"';

/** A share in percent, 0 to 100, as parts per million. */
export function percent() {
  return z.pipe(
    z.string({ error: PERCENT }),
    z.transform((value, context) => {
      const parsed = parseDecimal(value, 4);
      if (parsed.ok && parsed.minor >= 0 && parsed.minor <= 1_000_000) return parsed.minor;
      const meant = meantBy(value, 4);
      const hint =
        meant === null || parsed.ok
          ? 'Write digits and a point only, without the sign %.'
          : `Write "${meant}".`;
      refuse(context, value, { code: 'wrong-value', expected: PERCENT, hint });
      return 0;
    }),
  );
}

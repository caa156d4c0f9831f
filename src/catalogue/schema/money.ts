/** Prices and rates: quoted decimal strings in the files, whole numbers afterwards. */
import * as z from 'zod/mini';
import { refuse } from './fields.ts';

const DECIMAL = /^(-?)(\d{1,9})(?:\.(\d+))?$/;

/** What a shop's currency means for its prices. */
export interface Currency {
  /** ISO 4217 code. */
  readonly code: string;
  /** Digits after the point; null where the currency is not known, and then any number of them is read. */
  readonly digits: number | null;
}

/** `149` as the currency writes it: `149.00`. */
function sample(digits: number): string {
  return digits === 0 ? '149' : `149.${'0'.repeat(digits)}`;
}

function expectedPrice({ code, digits }: Currency, signed: boolean): string {
  const figures =
    digits === null ? '' : digits === 0 ? ' without a point' : ` with ${digits} digits after the point`;
  return `a price in ${code}${figures}, in quotes, such as "${signed ? '-' : ''}${sample(digits ?? 2)}"`;
}

/** The nearest right way to write what was meant, or null. */
function corrected(value: string, digits: number, signed: boolean): string | null {
  const plain = value
    .replace(/[^\d.,-]/g, '')
    .replace(/,(\d{1,3})$/, '.$1')
    .replaceAll(',', '');
  const parts = DECIMAL.exec(plain);
  if (parts === null || (parts[1] === '-' && !signed)) return null;
  const rounded = Number(plain).toFixed(digits);
  return rounded.startsWith('-') && Number(rounded) === 0 ? rounded.slice(1) : rounded;
}

/** An amount of the shop's currency in minor units; below 0 only where `signed`. */
function amount(currency: Currency, signed: boolean) {
  const expected = expectedPrice(currency, signed);
  const digits = currency.digits ?? 4;
  return z.pipe(
    z.string({ error: expected }),
    z.transform((value, context) => {
      const [, sign, units = '', fraction = ''] = DECIMAL.exec(value) ?? [];
      const right = sign === '' || (sign === '-' && signed);
      if (right && fraction.length <= digits) {
        const minor = Number(units + fraction.padEnd(digits, '0'));
        return sign === '-' && minor > 0 ? -minor : minor;
      }
      const code = right ? 'too-many-decimals' : 'wrong-price';
      const better = corrected(value, digits, signed);
      const hint = better === null ? 'Write digits and a point only.' : `Write "${better}".`;
      refuse(context, value, { code, expected, hint });
      return 0;
    }),
  );
}

/** The money fields of a shop: its schemas are made for its currency. */
export interface MoneyFields {
  /** A price, not below 0. */
  readonly price: ReturnType<typeof amount>;
  /** A difference, either sign. */
  readonly difference: ReturnType<typeof amount>;
}

/** Fields for prices in `currency`, whose values are minor units. */
export function moneyIn(currency: Currency): MoneyFields {
  return { price: amount(currency, false), difference: amount(currency, true) };
}

const PERCENT = 'a share in percent with at most 4 decimals, in quotes, such as "5.5"';

/** A share in percent, 0 to 100, as parts per million. */
export function percent() {
  return z.pipe(
    z.string({ error: PERCENT }),
    z.transform((value, context) => {
      const [, sign, units = '', fraction = ''] = DECIMAL.exec(value) ?? [];
      const ppm = Number(units + fraction.padEnd(4, '0'));
      if (sign === '' && fraction.length <= 4 && ppm <= 1_000_000) return ppm;
      const hint = 'Write digits and a point only, without the sign %, from "0" to "100".';
      refuse(context, value, { code: 'wrong-value', expected: PERCENT, hint });
      return 0;
    }),
  );
}

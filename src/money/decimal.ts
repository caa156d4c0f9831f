/**
 * Decimal strings and whole numbers, both ways and exactly: "149.00" is 14900 with 2 digits. No number with a
 * fraction is ever made on the way. Also used for percentages (4 digits: parts per million).
 */

export const DECIMAL_FAULTS = ['empty', 'comma', 'form', 'too-many-decimals', 'too-large'] as const;

/** Why a text is no amount. */
export interface DecimalFault {
  readonly code: (typeof DECIMAL_FAULTS)[number];
  /** Digits after the point that are allowed. */
  readonly digits: number;
  readonly found: string;
  /** The text that was probably meant; null where it cannot be told. */
  readonly meant: string | null;
}

export type DecimalResult =
  | { readonly ok: true; readonly minor: number }
  | { readonly ok: false; readonly fault: DecimalFault };

const DECIMAL = /^(-?)(0|[1-9][0-9]*)(?:\.([0-9]+))?$/;
const WITH_COMMA = /^-?(0|[1-9][0-9]*),[0-9]+$/;

/**
 * The whole number of units of 10^-`digits` that `text` states. Fewer decimals than `digits` are read as if zeros
 * followed; more are a fault, and so are spaces, a plus sign, leading zeros, grouping and exponents.
 */
export function parseDecimal(text: string, digits: number): DecimalResult {
  const refuse = (code: DecimalFault['code'], meant: string | null): DecimalResult => ({
    ok: false,
    fault: { code, digits, found: text, meant },
  });
  if (text.trim() === '') return refuse('empty', null);
  const match = DECIMAL.exec(text);
  if (match === null) {
    const withPoint = text.replace(',', '.');
    if (WITH_COMMA.test(text)) return refuse('comma', parseDecimal(withPoint, digits).ok ? withPoint : null);
    return refuse('form', DECIMAL.test(text.trim()) ? text.trim() : null);
  }
  const [, sign = '', whole = '', decimals = ''] = match;
  if (decimals.length > digits) {
    const kept = digits === 0 ? whole : `${whole}.${decimals.slice(0, digits)}`;
    return refuse('too-many-decimals', /^0*$/.test(decimals.slice(digits)) ? sign + kept : null);
  }
  const size = Number(whole + decimals.padEnd(digits, '0'));
  if (!Number.isSafeInteger(size)) return refuse('too-large', null);
  return { ok: true, minor: sign === '-' && size !== 0 ? -size : size };
}

/** The decimal string of a whole number of units of 10^-`digits`, with all its digits: 14900 with 2 is "149.00". */
export function toDecimal(minor: number, digits: number): string {
  const figures = String(Math.abs(minor)).padStart(digits + 1, '0');
  const sign = minor < 0 ? '-' : '';
  if (digits === 0) return sign + figures;
  return `${sign}${figures.slice(0, -digits)}.${figures.slice(-digits)}`;
}

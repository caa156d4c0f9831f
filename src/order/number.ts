/**
 * Order numbers: ten digits by chance and two check digits after ISO 7064 MOD 97-10, in groups of four for reading
 * aloud. Two of 10,000 orders share a number with a likelihood of one half percent; the digest on the slip tells them
 * apart.
 */

const FORM = /^\d{12}$/;
const RANDOM_DIGITS = 10;

/** Random bytes that a number is made from. */
export const NUMBER_BYTES = 16;

/** The two check digits of a string of digits: with them appended, the whole is 1 modulo 97 (ISO 7064, MOD 97-10). */
export function checkDigits(digits: string): string {
  return String(98 - remainder97(`${digits}00`)).padStart(2, '0');
}

/** Digits as a number modulo 97, for strings of any length. */
function remainder97(digits: string): number {
  return Array.from(digits).reduce((rest, digit) => (rest * 10 + Number(digit)) % 97, 0);
}

/**
 * An order number of 12 digits from `NUMBER_BYTES` random bytes; no digit is favoured by more than 1 in 10^28.
 * Throws a RangeError for another count of bytes.
 */
export function orderNumber(random: Uint8Array): string {
  if (random.length !== NUMBER_BYTES)
    throw new RangeError(`An order number takes ${NUMBER_BYTES} random bytes, not ${random.length}.`);
  const drawn = random.reduce((sum, byte) => sum * 256n + BigInt(byte), 0n) % 10n ** BigInt(RANDOM_DIGITS);
  const digits = String(drawn).padStart(RANDOM_DIGITS, '0');
  return digits + checkDigits(digits);
}

/** Whether the text is 12 digits with the right check digits. */
export const isOrderNumber = (text: string): boolean => FORM.test(text) && remainder97(text) === 1;

/** The number in groups of four, `1234-5678-9012`. */
export const showNumber = (number: string): string => number.replace(/(\d{4})(?=\d)/g, '$1-');

/** The number as somebody typed it, with spaces or hyphens; null where it is none, or a digit is wrong. */
export function readNumber(typed: string): string | null {
  const digits = typed.replace(/[\s\u2010-\u2015-]/g, '');
  return isOrderNumber(digits) ? digits : null;
}

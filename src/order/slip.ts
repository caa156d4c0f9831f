/** The slip that a buyer keeps or encloses: number and digest as one line of ASCII, for print and as a QR code. */
import { encode } from 'uqr';
import { isOrderNumber } from './number.ts';

export interface Slip {
  readonly number: string;
  /** SHA-256 of the order file before it was sealed, 64 hexadecimal digits. */
  readonly digest: string;
}

/** Capitals and digits alone: a QR code holds these in the least space. */
const FORM = /^BEVELBOOK 1 (\d{12}) ([0-9A-F]{64})$/;

/** The slip as text, such as `BEVELBOOK 1 482109375562 9F86...`. */
export const slipText = ({ number, digest }: Slip): string => `BEVELBOOK 1 ${number} ${digest.toUpperCase()}`;

/** The slip that a text is; null where it is none or its number has a wrong digit. */
export function readSlip(text: string): Slip | null {
  const [, number = '', digest = ''] = FORM.exec(text.trim()) ?? [];
  return isOrderNumber(number) ? { number, digest: digest.toLowerCase() } : null;
}

/**
 * The QR code of an ASCII text, row by row, true for dark, with the quiet zone of four modules around it; a quarter of
 * it may be soiled. Throws a RangeError for other text.
 */
export function qrCode(text: string): readonly (readonly boolean[])[] {
  if (!/^[\x20-\x7e]+$/.test(text)) throw new RangeError('Only printable ASCII goes into the QR code.');
  return encode(text, { ecc: 'Q', border: 4 }).data;
}

/** Reads a number as people write it in a prescription: a comma or a point, any minus, a unit behind it. */

export type Reading =
  | { readonly kind: 'blank' }
  | { readonly kind: 'number'; readonly value: number; readonly signed: boolean }
  | { readonly kind: 'unread' };

const NUMBER = /^([+\-\u2212\u2013]?)\s*(\d+(?:[.,]\d*)?|[.,]\d+)\s*(?:d|dpt|mm|\u0394|\u00b0|deg)?$/i;

/** What stands for no power in its place, such as `plano` for a sphere and `DS` for a cylinder. */
const NOTHING = /^(?:pl|plo|plan|plano|ds|dsph|sph|sphere|none|nil|[-\u2212\u2013\u2014])\.?$/i;

/** The number that `text` says; a word for none is 0. Spaces around it do not matter. */
export function readNumber(text: string): Reading {
  const plain = text.trim();
  if (plain === '') return { kind: 'blank' };
  if (NOTHING.test(plain)) return { kind: 'number', value: 0, signed: false };
  const [, sign = '', digits = ''] = NUMBER.exec(plain) ?? [];
  if (digits === '') return { kind: 'unread' };
  const size = Number(digits.replace(',', '.'));
  const minus = sign !== '' && sign !== '+';
  return { kind: 'number', value: minus && size !== 0 ? -size : size, signed: sign !== '' };
}

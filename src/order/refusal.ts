/** Why a file is not taken as an order: a code and figures. The sentences are the shop's words, `order.refused.<code>`. */
import type { Words } from '../catalogue/catalogue.ts';
import { type Slots, say } from '../catalogue/words.ts';

export const REFUSALS = [
  // the file as a whole
  'no-file',
  'unreadable',
  'empty',
  'too-large',
  'zip',
  'picture',
  'pdf',
  'no-key',
  'wrong-key',
  'tampered',
  'not-text',
  'cut-short',
  'not-json',
  'not-an-order',
  'newer-version',
  'older-version',
  // what is in it
  'forbidden-key',
  'too-deep',
  'too-many',
  'crowded',
  'long-text',
  'odd-text',
  'malformed',
  'unknown-key',
  'implausible',
  'pairs-differ',
  'attachment',
  'more',
] as const;
export type RefusalCode = (typeof REFUSALS)[number];

export interface Refusal {
  readonly code: RefusalCode;
  readonly slots: Slots;
}

export const refusal = (code: RefusalCode, slots: Slots = {}): Refusal => ({ code, slots });

/** The sentence of a refusal. Its slots may hold text of the file: it is text, to be shown as such. */
export const refusalText = (words: Words, { code, slots }: Refusal): string =>
  say(words, `order.refused.${code}`, slots);

/** A value of a file for a sentence: short, on one line, and of plain letters. */
export function briefly(value: unknown): string {
  if (value === undefined) return 'nothing';
  const letters = Array.from(JSON.stringify(value) ?? String(value)).slice(0, 61);
  const line = letters.map((letter) => (/[\p{C}\p{Zl}\p{Zp}]/u.test(letter) ? '?' : letter));
  return line.length > 60 ? `${line.slice(0, 57).join('')}...` : line.join('');
}

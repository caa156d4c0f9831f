/** Walks over the tokens of a written prescription and makes faults that point into its text. */
import { failure } from '../result.ts';
import type { NotationFault, Wanted } from './fault.ts';
import type { Token } from './tokens.ts';

/** A place among tokens. */
export interface Cursor {
  readonly text: string;
  readonly tokens: readonly Token[];
  at: number;
}

/** The token `ahead` places further on; the end token beyond the last. */
export const peek = (cursor: Cursor, ahead = 0): Token =>
  (cursor.tokens[cursor.at + ahead] ?? cursor.tokens.at(-1)) as Token;

/** Steps over the next token where its text is one of these. Tells whether it did. */
export function skip(cursor: Cursor, ...texts: readonly string[]): boolean {
  const { kind, text } = peek(cursor);
  const matches = kind !== 'number' && kind !== 'end' && texts.includes(text);
  if (matches) cursor.at++;
  return matches;
}

/** Steps over marks that only separate: / , & | = colons, and the words and, with, et, avec. */
export function skipSeparators(cursor: Cursor): void {
  while (skip(cursor, '/', ',', '&', '|', '=', ':', 'and', 'with', 'et', 'avec'));
}

/** Names of both eyes at once. */
export const BOTH_EYES = ['ou', 'odg', 'be', 'both'];

/** A fault at a token. */
export function faultAt(
  cursor: Cursor,
  { start, end }: Token,
  code: NotationFault['code'],
  wanted: Wanted['code'],
  figures: Wanted['figures'] = {},
) {
  const expected = { code: wanted, figures };
  return failure<NotationFault>({ code, start, end, expected, found: cursor.text.slice(start, end) });
}

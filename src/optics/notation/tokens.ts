/**
 * Splits a written prescription into numbers, words and marks, each with its place.
 *
 * A comma between digits is a decimal comma, else a separator. A sign may stand off its number by spaces; minus may
 * be a hyphen, a true minus or an en dash. `DCx90` is DC, x and 90.
 */
import { failure, type Result, success } from '../result.ts';
import type { NotationFault } from './fault.ts';

/** One piece of the text. */
export interface Token {
  readonly kind: 'number' | 'word' | 'mark' | 'line' | 'end';
  /** Lower case, without dots inside words. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** Of a number; 0 otherwise. */
  readonly value: number;
  /** Whether a number was written with a sign. */
  readonly signed: boolean;
}

const PATTERN =
  /(?<line>[\r\n]+|;)|(?<space>[^\S\r\n]+)|(?<number>(?:[+\-\u2212\u2013][^\S\r\n]*)?(?:\d+(?:[.,]\d+)?|[.,]\d+))|(?<mark>[/,:=@&|^*()\u00d7\u00b0\u2206\u0394\u221e])|(?<word>DC(?=x)|\p{L}+(?:\.\p{L}+)*(?:\.(?!\d))?)/iuy;

/** All tokens, the last of kind `end`; a fault at the first character that no prescription contains. */
export function tokenise(text: string): Result<readonly Token[], NotationFault> {
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    PATTERN.lastIndex = at;
    const groups = PATTERN.exec(text)?.groups;
    if (groups === undefined) return failure(unknownSign(text, at));
    const kind = (['line', 'number', 'mark', 'word'] as const).find((name) => groups[name] !== undefined);
    const found = text.slice(at, PATTERN.lastIndex);
    if (kind !== undefined) tokens.push(token(kind, found, at));
    at = PATTERN.lastIndex;
  }
  return success([...tokens, { ...token('mark', '', text.length), kind: 'end' }]);
}

function token(kind: 'line' | 'number' | 'mark' | 'word', found: string, start: number): Token {
  const place = { kind, start, end: start + found.length };
  if (kind !== 'number')
    return { ...place, text: found.toLowerCase().replaceAll('.', ''), value: 0, signed: false };
  const signed = !/^[\d.,]/.test(found);
  const digits = found.replace(/^[^\d.,]+/, '').replace(',', '.');
  const value = /^[\u2212\u2013-]/.test(found) ? -Number(digits) : Number(digits);
  return { ...place, text: found, value: value + 0, signed };
}

function unknownSign(text: string, at: number): NotationFault {
  const found = String.fromCodePoint(text.codePointAt(at) ?? 0);
  const expected = { code: 'sign', figures: {} } as const;
  return { code: 'unknown-sign', start: at, end: at + found.length, expected, found };
}

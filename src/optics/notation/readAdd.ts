/** Reads an add: `add +1.50`, `Add: 1.5`, `+1.50 add`. */
import { type Result, success } from '../result.ts';
import { type Cursor, faultAt, peek, skip } from './cursor.ts';
import type { NotationFault } from './fault.ts';

/** Range of an add that is read as such, D. */
const LEAST_ADD_D = 0.25;
const LARGEST_ADD_D = 6;
const ADD_WORDS = ['add', 'addition'];

/** Whether an add starts here, the word before or behind its amount. */
export const startsAdd = (cursor: Cursor): boolean =>
  (peek(cursor).kind === 'word' && ADD_WORDS.includes(peek(cursor).text)) || startsTrailingAdd(cursor);

/** Whether an amount with the word add behind it starts here. */
export const startsTrailingAdd = (cursor: Cursor): boolean =>
  peek(cursor).kind === 'number' &&
  ADD_WORDS.includes(peek(cursor, 1).text) &&
  peek(cursor, 2).kind !== 'number';

/** The amount, D; an add is plus whether the sign is written or not. Call only where `startsAdd`. */
export function readAdd(cursor: Cursor): Result<number, NotationFault> {
  skip(cursor, ...ADD_WORDS);
  while (skip(cursor, ':', '='));
  const token = peek(cursor);
  if (token.kind !== 'number' || token.value < LEAST_ADD_D || token.value > LARGEST_ADD_D) {
    const range = { least: LEAST_ADD_D, most: LARGEST_ADD_D };
    return faultAt(cursor, token, 'add-range', 'add-range', range);
  }
  const trailing = startsTrailingAdd(cursor);
  cursor.at++;
  skip(cursor, ...(trailing ? ADD_WORDS : ['d', 'dpt', 'ds']));
  return success(token.value);
}

/** Reads an add: `add +1.50`, `Add: 1.5`, `+1.50 add`; `add OU 1.5` and `add 1.5 OU` are for both eyes. */
import { type Result, success } from '../result.ts';
import { BOTH_EYES, type Cursor, faultAt, peek, skip } from './cursor.ts';
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

/** Whether the add that starts here names both eyes, before its amount or behind it. Leaves the cursor where it is. */
export function addsToBoth(cursor: Cursor): boolean {
  const start = cursor.at;
  skip(cursor, ...ADD_WORDS);
  while (skip(cursor, ':', '='));
  const before = BOTH_EYES.includes(peek(cursor).text);
  cursor.at = start;
  if (before) return true;
  const behind = readAdd(cursor).ok && endsWithBoth(cursor);
  cursor.at = start;
  return behind;
}

/** Whether both eyes are named here and nothing is said of them behind: what is belongs to the name. */
export function endsWithBoth(cursor: Cursor): boolean {
  if (!BOTH_EYES.includes(peek(cursor).text)) return false;
  const next = peek(cursor, 1);
  return next.kind === 'line' || next.kind === 'end' || [',', '/', '|', ')'].includes(next.text);
}

/** The amount, D; an add is plus whether the sign is written or not. Call only where `startsAdd`. */
export function readAdd(cursor: Cursor): Result<number, NotationFault> {
  skip(cursor, ...ADD_WORDS);
  while (skip(cursor, ':', '=') || skip(cursor, ...BOTH_EYES));
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

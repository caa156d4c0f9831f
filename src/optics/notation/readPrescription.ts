/**
 * Reads a written prescription in the usual notations, both eyes or one.
 *
 * Eyes are named OD, OS, R, L, RE, LE, right, left, and in French OD, OG, œil droit, œil gauche; OU, BE, both or ODG
 * names the two at once. An add on a line of its own, or with OU before it or behind it, is for both eyes. Anything
 * else is an exact fault; nothing is guessed.
 */
import { failure, type Result, success } from '../result.ts';
import { BOTH_EYES, type Cursor, faultAt, peek, skip, skipSeparators } from './cursor.ts';
import type { NotationFault } from './fault.ts';
import { addsToBoth, endsWithBoth, readAdd, startsAdd } from './readAdd.ts';
import { readEyeAt } from './readEye.ts';
import { type Token, tokenise } from './tokens.ts';
import type { WrittenEye, WrittenPrescription } from './written.ts';

type Named = 'right' | 'left' | 'both';

const NAMES: ReadonlyMap<string, Named> = new Map<string, Named>([
  ['od', 'right'],
  ['r', 'right'],
  ['re', 'right'],
  ['right', 'right'],
  ['os', 'left'],
  ['l', 'left'],
  ['le', 'left'],
  ['left', 'left'],
  ['droit', 'right'],
  ['og', 'left'],
  ['gauche', 'left'],
  ...BOTH_EYES.map((name) => [name, 'both'] as const),
]);
/** French names an eye behind its noun. */
const EYE_WORDS = ['œil', 'oeil'];

/** One eye without a name, as `-2.25 -0.75 x 90 add +1.50`. */
export function readEye(text: string): Result<WrittenEye, NotationFault> {
  const tokens = tokenise(text);
  if (!tokens.ok) return tokens;
  const cursor: Cursor = { text, tokens: tokens.value, at: 0 };
  while (peek(cursor).kind === 'line') cursor.at++;
  const eye = readEyeAt(cursor);
  if (!eye.ok) return eye;
  while (peek(cursor).kind === 'line') cursor.at++;
  const rest = peek(cursor);
  return rest.kind === 'end' ? eye : faultAt(cursor, rest, 'left-over', 'end');
}

/** Both eyes by name. */
export function readPrescription(text: string): Result<WrittenPrescription, NotationFault> {
  const tokens = tokenise(text);
  if (!tokens.ok) return tokens;
  const cursor: Cursor = { text, tokens: tokens.value, at: 0 };
  const read: Reading = { right: null, left: null, shared: null };
  for (;;) {
    while (peek(cursor).kind === 'line') cursor.at++;
    skipSeparators(cursor);
    if (peek(cursor).kind === 'line') continue;
    if (peek(cursor).kind === 'end') return finished(cursor, read);
    const fault = readEntry(cursor, read);
    if (fault !== null) return failure(fault);
  }
}

interface Reading {
  right: WrittenEye | null;
  left: WrittenEye | null;
  shared: SharedAdd | null;
}

/** An add for both eyes; `afterOne` where it followed one eye without naming both. */
interface SharedAdd {
  readonly addD: number;
  readonly token: Token;
  readonly afterOne: boolean;
}

function readEntry(cursor: Cursor, read: Reading): NotationFault | null {
  skip(cursor, ...EYE_WORDS);
  const label = peek(cursor);
  const named = label.kind === 'word' ? NAMES.get(label.text) : undefined;
  if (named !== undefined) {
    cursor.at++;
    skip(cursor, 'eye');
    skipSeparators(cursor);
  }
  if ((named === undefined || named === 'both') && startsAdd(cursor)) {
    return sharedAdd(cursor, read, named === undefined);
  }
  if (named === undefined) {
    const code = read.right === null && read.left === null ? 'no-eye' : 'left-over';
    return faultAt(cursor, label, code, 'eye').fault;
  }
  const eye = readEyeAt(cursor);
  if (!eye.ok) return eye.fault;
  for (const side of named === 'both' ? (['right', 'left'] as const) : ([named] as const)) {
    if (read[side] !== null) return faultAt(cursor, label, 'eye-twice', 'eye-once').fault;
    read[side] = eye.value;
  }
  return null;
}

function sharedAdd(cursor: Cursor, read: Reading, unnamed: boolean): NotationFault | null {
  const token = peek(cursor);
  const namesBoth = addsToBoth(cursor);
  const add = readAdd(cursor);
  if (!add.ok) return add.fault;
  if (endsWithBoth(cursor)) cursor.at++;
  if (read.shared !== null) return faultAt(cursor, token, 'twice', 'add-once-both').fault;
  const afterOne = unnamed && !namesBoth && (read.right === null) !== (read.left === null);
  read.shared = { addD: add.value, token, afterOne };
  return null;
}

function finished(
  cursor: Cursor,
  { right, left, shared }: Reading,
): Result<WrittenPrescription, NotationFault> {
  if (right === null && left === null) return faultAt(cursor, peek(cursor), 'no-eye', 'eye');
  if (shared?.afterOne && right !== null && left !== null) {
    return faultAt(cursor, shared.token, 'left-over', 'add-place');
  }
  const withAdd = (eye: WrittenEye | null) =>
    eye === null || shared === null || eye.addD !== null ? eye : { ...eye, addD: shared.addD };
  return success({ right: withAdd(right), left: withAdd(left) });
}

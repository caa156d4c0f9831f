/** Reads prism: `1.5 BI`, `0.5 base up`, `BI 1.5`, polar `2.5 @ 37`, `2.5 base 217`, or `2.5 BD @ 37`. */
import type { Base, NamedPrism } from '../prismBase.ts';
import { type Result, success } from '../result.ts';
import { type Cursor, faultAt, peek, skip } from './cursor.ts';
import type { NotationFault } from './fault.ts';

/** Largest prism that is read as such, prism dioptres. */
const LARGEST_PRISM = 40;

const SHORT: ReadonlyMap<string, Base> = new Map([
  ['bi', 'in'],
  ['bo', 'out'],
  ['bu', 'up'],
  ['bd', 'down'],
]);
const LONG: ReadonlyMap<string, Base> = new Map([
  ['in', 'in'],
  ['out', 'out'],
  ['up', 'up'],
  ['down', 'down'],
  ['interne', 'in'],
  ['nasale', 'in'],
  ['externe', 'out'],
  ['temporale', 'out'],
  ['supérieure', 'up'],
  ['inférieure', 'down'],
]);
const PRISM_WORDS = ['prism', 'prisme'];
const PRISM_UNITS = ['\u2206', '\u0394', '\u03b4', '^', 'pd', 'prism', 'prisme'];
/** Units that powers have too: they tell of prism only where a base follows. */
const SHARED_UNITS = ['d', 'dioptres', 'diopters', 'dioptries'];
const BASE_WORDS = ['base', 'b', '@'];

/** Whether a prism starts here: the word, a base name, or an unsigned number that a prism unit or a base follows. */
export function startsPrism(cursor: Cursor): boolean {
  const first = peek(cursor);
  if (first.kind === 'word') return PRISM_WORDS.includes(first.text) || SHORT.has(first.text);
  if (first.kind !== 'number' || first.signed) return false;
  const next = peek(cursor, 1).text;
  if (PRISM_UNITS.includes(next) || namesBase(next)) return true;
  return SHARED_UNITS.includes(next) && namesBase(peek(cursor, 2).text);
}

const namesBase = (text: string) => SHORT.has(text) || LONG.has(text) || BASE_WORDS.includes(text);

/** One prism with its base. Call only where `startsPrism`. */
export function readPrism(cursor: Cursor): Result<NamedPrism, NotationFault> {
  skip(cursor, ...PRISM_WORDS);
  while (skip(cursor, ':', '='));
  const baseFirst = SHORT.get(peek(cursor).text);
  if (baseFirst !== undefined) cursor.at++;
  const amount = readAmount(cursor);
  if (!amount.ok) return amount;
  const base = baseFirst === undefined ? readBase(cursor) : success(baseFirst);
  if (!base.ok) return base;
  const along = readAlong(cursor, base.value);
  return along.ok ? success({ amount: amount.value, base: along.value }) : along;
}

function readAmount(cursor: Cursor): Result<number, NotationFault> {
  const token = peek(cursor);
  const inRange = token.kind === 'number' && !token.signed && token.value <= LARGEST_PRISM;
  if (!inRange) {
    return faultAt(cursor, token, 'prism-range', 'prism-range', { most: LARGEST_PRISM });
  }
  cursor.at++;
  while (skip(cursor, ...PRISM_UNITS, ...SHARED_UNITS));
  return success(token.value);
}

function readBase(cursor: Cursor): Result<Base | number, NotationFault> {
  const token = peek(cursor);
  const short = SHORT.get(token.text);
  if (short !== undefined) {
    cursor.at++;
    return success(short);
  }
  while (skip(cursor, ...BASE_WORDS));
  const next = peek(cursor);
  const long = LONG.get(next.text);
  if (long !== undefined) {
    cursor.at++;
    return success(long);
  }
  if (next.kind === 'number' && next !== token && !next.signed && next.value <= 360) {
    cursor.at++;
    skip(cursor, '\u00b0', 'deg', 'degrees', 'degrés');
    return success(next.value);
  }
  return faultAt(cursor, next, 'no-base', 'base');
}

/** `BU @ 37`, 180-degree notation: up or down along a meridian. In and out have no such form. */
function readAlong(cursor: Cursor, base: Base | number): Result<Base | number, NotationFault> {
  if ((base !== 'up' && base !== 'down') || !skip(cursor, '@', 'along')) return success(base);
  const token = peek(cursor);
  if (token.kind !== 'number' || token.signed || token.value <= 0 || token.value >= 180) {
    return faultAt(cursor, token, 'no-base', 'meridian');
  }
  cursor.at++;
  skip(cursor, '\u00b0', 'deg', 'degrees', 'degrés');
  return success(base === 'up' ? token.value : token.value + 180);
}

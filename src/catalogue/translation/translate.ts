/**
 * A noun with the texts of a translation in place of its own. Where the translation lags behind (a text is missing, a
 * list has another length, a slot differs) the noun's own text stays, and the lag is told.
 */
import type { FieldPath } from '../fault.ts';
import type { TextFields, TextShape } from './texts.ts';

/** One thing that a translation lacks, or has too much. */
export interface Lag {
  readonly kind: 'missing' | 'left-over' | 'other-count' | 'other-slots';
  /** In the translation's file. */
  readonly path: FieldPath;
  readonly expected: string;
  readonly received: string;
}

type Plain = Readonly<Record<string, unknown>>;

const isPlain = (value: unknown): value is Plain =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The slots of a text, each once, in the order of the alphabet. */
export const slotsOf = (text: string): string =>
  [...new Set(text.match(/\{[A-Za-z][A-Za-z0-9]*\}/g) ?? [])].sort().join(', ');

/** The noun in the words that are given, and where those lag behind. */
export function translate<T extends object>(fields: TextFields, noun: T, given: Plain) {
  const lags: Lag[] = [];
  return { value: group(fields, noun as Plain, given, [], lags) as T, lags };
}

function group(fields: TextFields, own: Plain, given: Plain, path: FieldPath, lags: Lag[]): Plain {
  const told = Object.entries(fields).map(([name, shape]) => [
    name,
    field(shape, own[name], given[name], [...path, name], lags),
  ]);
  return { ...own, ...Object.fromEntries(told) };
}

function field(shape: TextShape, own: unknown, given: unknown, path: FieldPath, lags: Lag[]): unknown {
  if (own === null || own === undefined) {
    if (given !== undefined) lags.push(leftOver(path));
    return own;
  }
  if (shape === 'name') return given ?? own;
  if (shape === 'text') return text(String(own), given, path, lags);
  if (shape === 'texts')
    return inOrder(
      own as string[],
      given,
      path,
      lags,
      (one) => one,
      (_, told) => told,
    );
  if ('group' in shape) return group(shape.group, own as Plain, isPlain(given) ? given : {}, path, lags);
  const items = own as readonly Plain[];
  if ('inOrder' in shape) {
    const put = (one: Plain, told: string) => ({ ...one, [shape.inOrder]: told });
    return inOrder(items, given, path, lags, (one) => String(one[shape.inOrder]), put);
  }
  const fields = 'text' in shape ? [shape.text] : shape.texts;
  return byKey(items, shape.byKey, fields, 'text' in shape, isPlain(given) ? given : {}, path, lags);
}

function text(own: string, given: unknown, path: FieldPath, lags: Lag[]): string {
  const missing = typeof given !== 'string';
  if (missing || slotsOf(given) !== slotsOf(own)) {
    const expected = missing ? `the text for "${own}"` : slotsOf(own) || 'a text without slots';
    const received = missing ? 'nothing' : slotsOf(given) || 'none';
    lags.push({ kind: missing ? 'missing' : 'other-slots', path, expected, received });
    return own;
  }
  return given;
}

function inOrder<Item>(
  own: readonly Item[],
  given: unknown,
  path: FieldPath,
  lags: Lag[],
  textOf: (item: Item) => string,
  put: (item: Item, told: string) => Item,
): readonly Item[] {
  const told: readonly unknown[] = Array.isArray(given) ? given : [];
  if (told.length === own.length)
    return own.map((item, at) => put(item, text(textOf(item), told[at], [...path, at], lags)));
  const expected = `${own.length} texts, for ${own.map((item) => `"${textOf(item)}"`).join(', ')}`;
  const kind = given === undefined ? 'missing' : 'other-count';
  lags.push({ kind, path, expected, received: given === undefined ? 'nothing' : String(told.length) });
  return own;
}

function byKey(
  own: readonly Plain[],
  key: string,
  fields: readonly string[],
  isText: boolean,
  given: Plain,
  path: FieldPath,
  lags: Lag[],
): readonly Plain[] {
  const keys = own.map((item) => String(item[key]));
  for (const name of Object.keys(given)) if (!keys.includes(name)) lags.push(leftOver([...path, name]));
  return own.map((item) => {
    const name = String(item[key]);
    const told = given[name];
    const at = [...path, name];
    const texts = fields.map((one) => {
      const words = isText ? told : isPlain(told) ? told[one] : undefined;
      return [one, text(String(item[one]), words, isText ? at : [...at, one], lags)];
    });
    return { ...item, ...Object.fromEntries(texts) };
  });
}

const leftOver = (path: FieldPath): Lag => ({
  kind: 'left-over',
  path,
  expected: 'texts of what the shop has',
  received: `a text for "${path.at(-1)}", which is not there`,
});

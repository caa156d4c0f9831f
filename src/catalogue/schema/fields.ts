/**
 * The kinds of field that content is made of. Each says what it expects in words for the owner: zod's message of
 * an issue is always that phrase.
 */
import * as z from 'zod/mini';
import { isCivilDate } from '../civilDate.ts';
import type { FaultDetail } from '../fault.ts';
import { expects } from './about.ts';

/** What a check of our own says of a value; what was found is added later. */
export type Refusal = Omit<FaultDetail, 'received'>;

/** The money fields of a shop; money.ts makes them for its currency. Values are minor units. */
export interface MoneyFields {
  /** A price, not below 0. */
  readonly price: z.ZodMiniType<number, string>;
  /** A difference, either sign. */
  readonly difference: z.ZodMiniType<number, string>;
}

/** Adds a fault of our own in a check or a transform. */
export function refuse(context: { issues: unknown[] }, input: unknown, params: Refusal): void {
  context.issues.push({ code: 'custom', input, message: params.expected, params, continue: false });
}

/** A map of exactly these fields; others are faults. */
export function fields<Shape extends z.core.$ZodLooseShape>(shape: Shape) {
  const known = Object.keys(shape).join(' ');
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === 'unrecognized_keys' ? known : `the fields ${known.replaceAll(' ', ', ')}`,
  });
}

/** A text that is not blank; spaces around it are dropped. */
export function text(expected = 'a text') {
  const field = z.string({ error: expected }).check(z.trim(), z.minLength(1, { error: expected }));
  return expects(expected, field, { pattern: '\\S' });
}

/** A text of a given form. */
export function textLike(form: RegExp, expected: string) {
  return expects(expected, z.string({ error: expected }).check(z.regex(form, { error: expected })));
}

export const ID_FORM = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;

/** An id: what a file is called, or what names an entry of a list. */
export function id() {
  return textLike(ID_FORM, 'an id of small letters a-z, digits and hyphens');
}

/** A language tag of BCP 47: language, then what narrows it. */
export function language() {
  const form = /^[a-z]{2,3}(?:-[A-Za-z0-9]+)*$/;
  const expected = 'a language such as en or fr-CA';
  const field = z.pipe(
    z.string({ error: expected }),
    z.transform((value, context) => {
      const [first = '', ...rest] = value.trim().split(/[-_ ]/);
      const meant = [first.toLowerCase(), ...rest].join('-');
      const hint = form.test(meant) ? `Write ${meant}.` : `Write ${expected}.`;
      if (!form.test(value)) refuse(context, value, { code: 'wrong-value', expected, hint });
      return value;
    }),
  );
  return expects(expected, field, { pattern: form.source });
}

/** A number from `from` to `to`, both included; `unit` is `mm`, `D`, ... or '' for none. */
export function number(from: number, to: number, unit = '') {
  const error = `a number from ${from} to ${to}${unit === '' ? '' : ` ${unit}`}`;
  return expects(error, z.number({ error }).check(z.gte(from, { error }), z.lte(to, { error })));
}

/** A whole number from `from` to `to`, both included. */
export function whole(from: number, to: number, unit = '') {
  const error = `a whole number from ${from} to ${to}${unit === '' ? '' : ` ${unit}`}`;
  return expects(error, z.int({ error }).check(z.gte(from, { error }), z.lte(to, { error })));
}

/** `true` or `false`. */
export function flag() {
  return expects('true or false', z.boolean({ error: 'true or false' }));
}

/** One word of a list. */
export function oneOf<const Words extends readonly string[]>(words: Words) {
  const last = words.at(-1) ?? '';
  const error = words.length === 1 ? last : `${words.slice(0, -1).join(', ')} or ${last}`;
  return expects(error, z.enum(words, { error }));
}

/** A list of at least `least` items. */
export function list<Item extends z.core.$ZodType>(item: Item, least = 0) {
  const error = least === 0 ? 'a list' : `a list of at least ${least}`;
  return expects(error, z.array(item, { error }).check(z.minLength(least, { error })));
}

/** The value, `absent` where the field is left out. */
export function orElse<Field extends z.core.$ZodType>(field: Field, absent: z.core.output<Field>) {
  return z._default(field, absent as never);
}

/** The value, or null where the field is left out or is `null`. */
export function orNull<Field extends z.core.$ZodType>(field: Field) {
  return z._default(z.nullable(field), null);
}

/** A colour as sRGB, such as `#5b3a29`; small letters in the result. */
export function colour() {
  const expected = 'a colour such as "#5b3a29", in quotes';
  const written = textLike(/^#[0-9a-fA-F]{6}$/, expected);
  const small = z.transform((value: string) => value.toLowerCase());
  return expects(expected, z.pipe(written, small), { format: 'color-hex' });
}

/** A pair of numbers `[from, to]`, from the smaller to the larger, both included. */
export function range(from: number, to: number, unit: string) {
  const expected = `two numbers from ${from} to ${to} ${unit}, the smaller first, such as [${from}, ${to}]`;
  const item = number(from, to, unit);
  const field = z.pipe(
    z.tuple([item, item], { error: expected }),
    z.transform(([low, high], context) => {
      if (low > high)
        refuse(context, [low, high], { code: 'not-ascending', expected, hint: `Write [${high}, ${low}].` });
      return { from: low, to: high };
    }),
  );
  return expects(expected, field);
}

const DAY_FORM = /^(\d{4})-(\d{1,2})-(\d{1,2})$/;
const DAY = 'a day of the calendar as YYYY-MM-DD';

/** What to do about a day that is none: its month is too short for it, or it is written otherwise. */
function dayHint(year: number, month: number): string {
  if (month < 1 || month > 12) return 'Write year, month and day, such as 2026-11-25.';
  const days = [
    31,
    isCivilDate(`${String(year).padStart(4, '0')}-02-29`) ? 29 : 28,
    31,
    30,
    31,
    30,
    31,
    31,
    30,
    31,
    30,
    31,
  ][month - 1];
  return `That month has ${days} days. Mend the day, or the month.`;
}

/** A civil day; no time, no zone. */
export function civilDay() {
  const field = z.pipe(
    z.string({ error: DAY }),
    z.transform((value, context) => {
      const [, year = '', month = '', day = ''] = DAY_FORM.exec(value) ?? [];
      const written = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
      const exists = isCivilDate(written);
      if (exists && written === value) return value;
      const hint = exists ? `Write ${written}.` : dayHint(Number(year), Number(month));
      refuse(context, value, { code: 'wrong-date', expected: DAY, hint });
      return value;
    }),
  );
  return expects(DAY, field, {
    format: 'date',
    pattern: '^\\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\\d|3[01])$',
    examples: ['2026-11-25'],
  });
}

/** `all`, or a list of ids. */
export function idsOrAll() {
  const error = 'the word all, or a list of ids';
  return expects(error, z.union([z.literal('all'), list(id())], { error }), { examples: ['all'] });
}

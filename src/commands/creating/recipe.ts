/** What `npm run new` can make: which questions are asked, and what becomes of the answers. */
import type { Content } from '../../catalogue/content.ts';
import type { FieldPath } from '../../catalogue/fault.ts';
import type { Currency } from '../../catalogue/schema/money.ts';
import type { Schema } from '../../catalogue/schema/parse.ts';
import { parseDecimal, toDecimal } from '../../money/decimal.ts';
import type { Change } from '../writeAll.ts';

/** The shop as far as it can be read. */
export interface Known {
  readonly folder: string;
  readonly currency: Currency;
  readonly content: Content;
}

/** What was typed, by the names of the questions. */
export type Answers = Readonly<Record<string, string>>;

export interface Question {
  /** Name of its flag: `price` is `--price`. */
  readonly name: string;
  readonly asks: string;
  /** Where the answer stands in the value: what the schema says there is said of the answer. */
  readonly field?: FieldPath;
  /** What is wrong with the answer beside those before it, which no field says alone; null where nothing is. */
  readonly refuses?: (answers: Answers, known: Known) => string | null;
  /** The only answers there are. */
  readonly choices?: (known: Known, answers: Answers) => readonly string[];
  /** The choices may be several, with commas. */
  readonly many?: boolean;
  /** Taken where nothing is typed; '' stands for none, null where an answer is needed. */
  readonly suggest?: (answers: Answers, known: Known) => string | null;
  /** Whether it is asked at all after the answers before it. */
  readonly applies?: (answers: Answers) => boolean;
}

export interface Recipe {
  readonly name: string;
  /** What it makes, for the list of them. */
  readonly says: string;
  readonly questions: readonly Question[];
  /** The list of a file that is there, of which the value becomes an entry; a file of its own where there is none. */
  readonly list?: string;
  /** What the answers come to, in the form of a content file or a part of one. */
  readonly value: (answers: Answers, known: Known) => unknown;
  readonly schema: (currency: Currency) => Schema<unknown>;
  /** Files to write; an Error says why it cannot be done. */
  readonly changes: (answers: Answers, known: Known) => readonly Change[] | Error;
  /** What the owner does next. */
  readonly next: (answers: Answers, known: Known) => readonly string[];
}

/** The number that was typed, or the text as it is, of which the schema says what is wrong. */
export function numeric(answer: string | undefined): number | string {
  const text = (answer ?? '').trim();
  return /^-?\d+(?:\.\d+)?$/.test(text) ? Number(text) : text;
}

/** `149` as `149.00`; other texts as they are. */
export function priced(answer: string | undefined, { digits }: Currency): string {
  const text = (answer ?? '').trim();
  const parsed = parseDecimal(text, digits ?? 4);
  return parsed.ok && digits !== null ? toDecimal(parsed.minor, digits) : text;
}

/** Null for an answer that is empty. */
export function orNone(answer: string | undefined): string | null {
  return answer === undefined || answer.trim() === '' ? null : answer.trim();
}

/** The names in a list with commas. */
export function named(answer: string | undefined): string[] {
  return (answer ?? '').split(',').flatMap((part) => orNone(part) ?? []);
}

/** Yes or no as it may be typed; other texts as they are. */
export function truth(answer: string | undefined): boolean | string {
  const text = (answer ?? '').trim();
  if (/^(?:yes|y|true)$/i.test(text)) return true;
  return /^(?:no|n|false)$/i.test(text) ? false : text;
}

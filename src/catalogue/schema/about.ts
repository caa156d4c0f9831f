/** What an editor tells of a field while the owner types it: meaning, what to write, examples. */
import type * as z from 'zod/mini';

type AnySchema = z.core.$ZodType;

/** What is known of a schema besides its type. */
interface Help {
  /** Meaning, unit and default. */
  readonly says: string | null;
  /** What to write, as the text of a fault says it. */
  readonly expected: string | null;
  /** Keywords of JSON Schema that a check of our own stands for. */
  readonly keywords: Readonly<Record<string, unknown>>;
}

/** What nobody needs to be told. */
const OBVIOUS = new Set(['a text', 'a list']);

const NONE: Help = { says: null, expected: null, keywords: {} };
const kept = new WeakMap<AnySchema, Help>();

/** Own help, or that of the schema which this one wraps or refines. */
function helpOf(schema: AnySchema): Help {
  const { innerType, in: input } = schema._zod.def as { innerType?: AnySchema; in?: AnySchema };
  const inner = innerType ?? input ?? schema._zod.parent;
  return kept.get(schema) ?? (inner === undefined ? NONE : helpOf(inner));
}

/** The schema, with what it expects in words and the JSON Schema keywords that its own checks amount to. */
export function expects<Schema extends AnySchema>(
  expected: string,
  schema: Schema,
  keywords: Help['keywords'] = {},
): Schema {
  kept.set(schema, { ...helpOf(schema), expected, keywords });
  return schema;
}

/** A copy of the schema that says what the field means, with its unit and its default, and examples. */
export function about<Schema extends AnySchema>(
  says: string,
  schema: Schema,
  ...examples: readonly unknown[]
): Schema {
  const copy = new (schema._zod.constr as new (def: unknown) => Schema)(schema._zod.def);
  const { expected } = helpOf(schema);
  const { keywords } = kept.get(schema) ?? NONE;
  kept.set(copy, { says, expected, keywords: examples.length > 0 ? { ...keywords, examples } : keywords });
  return copy;
}

/** JSON Schema keywords of a schema's help. */
export function helpKeywords(schema: AnySchema): Readonly<Record<string, unknown>> {
  const { says, expected, keywords } = kept.get(schema) ?? NONE;
  const write = expected === null || OBVIOUS.has(expected) ? null : `Write ${expected}.`;
  const description = [says, write].filter((part) => part !== null).join(' ');
  return description === '' ? keywords : { description, ...keywords };
}

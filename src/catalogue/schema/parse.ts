/** Runs a schema over plain values, and tells what is wrong in our own terms: zod's stay in this folder. */
import * as z from 'zod/mini';
import type { FaultCode, FaultDetail, FieldPath } from '../fault.ts';

/** One thing that a schema refuses. */
export interface SchemaIssue {
  readonly kind: 'missing' | 'unknown-key' | 'type' | 'value';
  /** For an unknown key the key itself is the last part. */
  readonly path: FieldPath;
  readonly expected: string;
  /** The types that would do. */
  readonly wanted?: readonly string[];
  /** What could have been written instead: words of a list, or fields. */
  readonly choices?: readonly string[] | undefined;
  /** From a check of our own. */
  readonly code?: FaultCode | undefined;
  readonly hint?: string | undefined;
}

/** A value of the schema, or all that is wrong. */
export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly issues: readonly SchemaIssue[] };

/** A schema of this folder. */
export type Schema<T> = z.core.$ZodType<T>;

type ZodIssue = z.core.$ZodIssue;

/** Parses `raw`; collects every issue. */
export function parseWith<T>(schema: Schema<T>, raw: unknown): Parsed<T> {
  const result = z.safeParse(schema, raw);
  if (result.success) return { ok: true, value: result.data };
  return { ok: false, issues: result.error.issues.flatMap((issue) => flatten(issue, raw, [])) };
}

/** The fields of `raw` that are right by themselves, where the schema is one of fields; it need not take the whole. */
export function parseParts<T>(schema: Schema<T>, raw: unknown): Readonly<Record<string, unknown>> {
  const def = schema._zod.def as { in?: Schema<unknown>; shape?: Readonly<Record<string, Schema<unknown>>> };
  if (def.in !== undefined) return parseParts(def.in, raw);
  const shape = def.shape ?? {};
  // What is left out may be there under a name that is misspelt.
  const isSure = Object.keys(raw ?? {}).every((name) => name in shape);
  const parts = Object.entries(shape).flatMap(([name, field]) => {
    const value = valueAt(raw, [name]);
    const part = parseWith(field, value);
    return part.ok && (isSure || value !== undefined) ? [[name, part.value] as const] : [];
  });
  return Object.fromEntries(parts);
}

function flatten(issue: ZodIssue, raw: unknown, base: FieldPath): SchemaIssue[] {
  const path = [...base, ...issue.path] as (string | number)[];
  if (issue.code === 'unrecognized_keys') {
    const choices = issue.message.split(' ');
    return issue.keys.map((key) => ({
      kind: 'unknown-key',
      path: [...path, key],
      expected: issue.message,
      choices,
    }));
  }
  const missing = valueAt(raw, path) === undefined;
  if (issue.code === 'invalid_union' && !missing) {
    const branch = meantBranch(issue.errors);
    if (branch !== null) return branch.flatMap((inner) => flatten(inner, raw, path));
  }
  if (issue.code === 'custom' && issue.params !== undefined) {
    const { code, expected, hint } = issue.params as FaultDetail;
    return [{ kind: 'value', path, expected, code, hint }];
  }
  const kind = missing
    ? 'missing'
    : issue.code === 'invalid_type' || issue.code === 'invalid_union'
      ? 'type'
      : 'value';
  return [{ kind, path, expected: issue.message, wanted: wantedTypes(issue), choices: choicesOf(issue) }];
}

/** The form that the author had in mind: of those whose outer type fits, the one with the fewest issues. */
function meantBranch(branches: readonly (readonly ZodIssue[])[]): readonly ZodIssue[] | null {
  const isOuter = ({ path, code }: ZodIssue) =>
    path.length === 0 && (code === 'invalid_type' || code === 'invalid_value' || code === 'invalid_union');
  const weight = (branch: readonly ZodIssue[]) =>
    branch.reduce((sum, issue) => sum + (issue.code === 'unrecognized_keys' ? issue.keys.length : 1), 0);
  const fitting = branches.filter((branch) => !branch.some(isOuter));
  return fitting.reduce<readonly ZodIssue[] | null>(
    (best, branch) => (best === null || weight(branch) < weight(best) ? branch : best),
    null,
  );
}

function wantedTypes(issue: ZodIssue): readonly string[] {
  if (issue.code === 'invalid_type') return [issue.expected];
  return issue.code === 'invalid_union' ? issue.errors.flatMap((branch) => branch.flatMap(wantedTypes)) : [];
}

function choicesOf(issue: ZodIssue): readonly string[] | undefined {
  if (issue.code === 'invalid_value') return issue.values.map(String);
  if (issue.code !== 'invalid_union') return undefined;
  const choices = issue.errors.flatMap((branch) => branch.flatMap((inner) => choicesOf(inner) ?? []));
  return choices.length === 0 ? undefined : choices;
}

/** The value at `path` in plain values; undefined where there is none. */
export function valueAt(raw: unknown, path: FieldPath): unknown {
  let value = raw;
  for (const part of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, part)) return undefined;
    value = (value as Record<string | number, unknown>)[part];
  }
  return value;
}

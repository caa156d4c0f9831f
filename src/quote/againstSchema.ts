/** What a request has against its schema, in words. */
import type * as z from 'zod/mini';
import { nearest } from '../catalogue/nearest.ts';
import { didYouMean, type Fault } from './fault.ts';

/** Every fault of the shape; a misspelt key is not told to be missing as well. */
export function shapeFaults(
  issues: readonly z.core.$ZodIssue[],
  schema: z.core.$ZodType,
  root: unknown,
): Fault[] {
  const meant = new Set<string>();
  const faults = issues.flatMap((issue) => issueFaults(issue, { schema, root, meant }));
  return faults.filter(({ path, found }) => found !== 'nothing' || !meant.has(path));
}

interface Against {
  readonly schema: z.core.$ZodType;
  readonly root: unknown;
  /** Paths of keys that others were meant for. */
  readonly meant: Set<string>;
}

/** The keys that an object may have at a path of the schema. */
function keysAt(schema: z.core.$ZodType, path: readonly PropertyKey[]): string[] {
  const def = schema._zod.def as {
    readonly innerType?: z.core.$ZodType;
    readonly options?: readonly z.core.$ZodType[];
    readonly element?: z.core.$ZodType;
    readonly shape?: Readonly<Record<string, z.core.$ZodType>>;
  };
  if (def.innerType) return keysAt(def.innerType, path);
  if (def.options) return def.options.flatMap((option) => keysAt(option, path));
  const [part, ...rest] = path;
  if (part === undefined) return Object.keys(def.shape ?? {});
  const inner = def.element ?? def.shape?.[String(part)];
  return inner === undefined ? [] : keysAt(inner, rest);
}

const under = (path: string, key: string) => (path === '' ? key : `${path}.${key}`);

function issueFaults(issue: z.core.$ZodIssue, against: Against): Fault[] {
  const { schema, root, meant } = against;
  const path = issue.path.map(String).join('.');
  if (issue.code === 'invalid_union') {
    const nearest = issue.errors.find((branch) => !branch.some(isOtherKind));
    if (nearest)
      return nearest.flatMap((inner) =>
        issueFaults({ ...inner, path: [...issue.path, ...inner.path] }, against),
      );
  }
  if (issue.code === 'unrecognized_keys') {
    const known = keysAt(schema, issue.path);
    return issue.keys.map((key) => {
      const near = nearest(key, known);
      if (near !== null) meant.add(under(path, near));
      return {
        path: under(path, key),
        message: 'This key is not known here.',
        expected: `only ${known.join(', ')}${didYouMean(near)}`,
        found: key,
      };
    });
  }
  const found = at(root, issue.path);
  return [
    {
      path: path === '' ? '(whole request)' : path,
      message:
        found === undefined ? 'A value is missing.' : 'This value is not of the kind that is needed here.',
      expected: expectation(issue, found),
      found: shown(found),
    },
  ];
}

/** The value is of another kind altogether than this branch of a union: the branch was not meant. */
const isOtherKind = ({ code, path }: { readonly code?: string | undefined; readonly path: PropertyKey[] }) =>
  path.length === 0 && (code === 'invalid_type' || code === 'invalid_value');

function expectation(issue: z.core.$ZodIssue, found: unknown): string {
  if (issue.code === 'invalid_type')
    return `${/^[aeiou]/.test(issue.expected) ? 'an' : 'a'} ${issue.expected}`;
  if (issue.code === 'invalid_value') {
    const values = issue.values.map(String);
    return values.join(', ') + didYouMean(typeof found === 'string' ? nearest(found, values) : null);
  }
  if (issue.code === 'invalid_format' || issue.code === 'custom') return 'a civil date such as 2026-11-25';
  if (issue.code === 'too_small') return `at least ${issue.minimum}`;
  if (issue.code === 'too_big') return `at most ${issue.maximum}`;
  if (issue.code === 'invalid_union')
    return issue.errors
      .map((branch) =>
        branch
          .slice(0, 1)
          .map((inner) => expectation(inner, found))
          .join(''),
      )
      .join(', or ');
  return 'another value';
}

/** The value at a path of JSON; undefined where there is none. */
export function at(json: unknown, keys: readonly PropertyKey[]): unknown {
  return keys.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[key] : undefined,
    json,
  );
}

function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  const text = JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

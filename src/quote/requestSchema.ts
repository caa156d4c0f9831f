/** Shape of the JSON at the one door; unknown keys are faults. Plausibility is plausible.ts, names are resolve.ts. */
import * as z from 'zod/mini';
import { isCivilDate } from '../catalogue/civilDate.ts';
import { USES } from '../catalogue/design.ts';
import { MOUNTINGS } from '../catalogue/frame.ts';
import type { Fault } from './fault.ts';
import { BLANK_CHOICES, type QuoteRequest, WEARERS } from './request.ts';

const finite = z.number();
const optionalNullable = <T extends z.ZodMiniType>(type: T) => z.optional(z.nullable(type));
const civilDate = z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/), z.refine(isCivilDate));

const prism = z.strictObject({
  amount: finite,
  base: z.union([z.enum(['in', 'out', 'up', 'down']), finite]),
});

const eye = z.strictObject({
  sphere: z.optional(finite),
  cylinder: optionalNullable(finite),
  axis: optionalNullable(finite),
  add: optionalNullable(finite),
  prism: optionalNullable(z.array(prism)),
  balance: z.optional(z.boolean()),
});

const prescription = z.strictObject({
  right: eye,
  left: eye,
  vertexDistance: optionalNullable(finite),
  issued: optionalNullable(civilDate),
});

const bothEyes = z.strictObject({ right: finite, left: finite });

const fit = z.strictObject({
  pd: z.optional(z.union([finite, bothEyes])),
  nearPd: z.optional(z.union([finite, bothEyes])),
  fittingHeight: z.optional(bothEyes),
  segmentHeight: z.optional(bothEyes),
  vertexDistance: z.optional(finite),
  pantoscopicTilt: z.optional(finite),
  faceForm: z.optional(finite),
});

const ownFrame = z.strictObject({
  a: finite,
  b: finite,
  dbl: finite,
  ed: z.optional(finite),
  family: z.optional(z.string()),
  radii: z.optional(z.array(finite).check(z.minLength(36), z.maxLength(1440))),
  mounting: z.enum(MOUNTINGS),
  faceForm: z.optional(finite),
});

const lenses = z.strictObject({
  use: z.enum(USES),
  design: z.string(),
  material: z.string(),
  tint: z.nullable(z.string()),
  coating: z.nullable(z.string()),
  blank: z.optional(z.enum(BLANK_CHOICES)),
});

const pair = z.strictObject({
  frame: z.union([z.string(), ownFrame]),
  size: z.optional(z.string()),
  colourway: z.optional(z.string()),
  wearer: z.optional(z.enum(WEARERS)),
  prescription: z.nullable(prescription),
  fit: z.optional(fit),
  lenses,
});

const order = {
  date: civilDate,
  language: z.optional(z.string()),
  destination: z.optional(z.string()),
  taxExemption: optionalNullable(z.string()),
  codes: z.optional(z.array(z.string())),
};

/** The request as JSON: also the source of its JSON Schema. */
export const requestSchema = z.strictObject({
  ...order,
  pairs: z.array(pair).check(z.minLength(1), z.maxLength(20)),
});

/** Keys that a bare package may carry beside its own. */
const ORDER_KEYS = Object.keys(order);

export type ReadRequest =
  | { readonly ok: true; readonly request: QuoteRequest }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** A request read from JSON; a bare package stands for one pair, and a missing date is `today`. */
export function readRequest(json: unknown, today: string): ReadRequest {
  const asked = whole(json, today);
  const result = requestSchema.safeParse(asked);
  if (result.success) return { ok: true, request: result.data as QuoteRequest };
  const faults = result.error.issues.flatMap((issue) => issueFaults(issue, asked));
  return { ok: false, faults: asWritten(json, faults) };
}

/** Whether the JSON is a bare package: its faults are named from the package, not from a list of pairs. */
const isBare = (json: unknown): json is Record<string, unknown> =>
  typeof json === 'object' && json !== null && !Array.isArray(json) && 'frame' in json;

/** Paths of faults as the writer of a bare package sees them. */
export const asWritten = (json: unknown, faults: readonly Fault[]): readonly Fault[] =>
  isBare(json) ? faults.map((fault) => ({ ...fault, path: fault.path.replace(/^pairs\.0\./, '') })) : faults;

function whole(json: unknown, today: string): unknown {
  if (typeof json !== 'object' || json === null || Array.isArray(json)) return json;
  if (!isBare(json)) return { date: today, ...json };
  const pair: Record<string, unknown> = {};
  const rest: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(json)) (ORDER_KEYS.includes(key) ? rest : pair)[key] = value;
  return { date: today, ...rest, pairs: [pair] };
}

function issueFaults(issue: z.core.$ZodIssue, root: unknown): Fault[] {
  const path = issue.path.map(String).join('.');
  if (issue.code === 'invalid_union') {
    const nearest = issue.errors.find((branch) => !branch.some(isOtherKind));
    if (nearest)
      return nearest.flatMap((inner) =>
        issueFaults({ ...inner, path: [...issue.path, ...inner.path] }, root),
      );
  }
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => ({
      path: path === '' ? key : `${path}.${key}`,
      message: 'This key is not known here.',
      expected: 'only keys of the request format (npm run -s quote -- --schema request)',
      found: key,
    }));
  const found = at(root, issue.path);
  return [
    {
      path: path === '' ? '(whole request)' : path,
      message:
        found === undefined ? 'A value is missing.' : 'This value is not of the kind that is needed here.',
      expected: expectation(issue),
      found: shown(found),
    },
  ];
}

/** The value is of another kind altogether than this branch of a union: the branch was not meant. */
const isOtherKind = ({ code, path }: { readonly code?: string | undefined; readonly path: PropertyKey[] }) =>
  path.length === 0 && (code === 'invalid_type' || code === 'invalid_value');

function expectation(issue: z.core.$ZodIssue): string {
  if (issue.code === 'invalid_type')
    return `${/^[aeiou]/.test(issue.expected) ? 'an' : 'a'} ${issue.expected}`;
  if (issue.code === 'invalid_value') return issue.values.map(String).join(', ');
  if (issue.code === 'invalid_format' || issue.code === 'custom') return 'a civil date such as 2026-11-25';
  if (issue.code === 'too_small') return `at least ${issue.minimum}`;
  if (issue.code === 'too_big') return `at most ${issue.maximum}`;
  if (issue.code === 'invalid_union')
    return issue.errors.map((branch) => branch.slice(0, 1).map(expectation).join('')).join(', or ');
  return 'another value';
}

function at(json: unknown, keys: readonly PropertyKey[]): unknown {
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

/** Shape of the JSON at the one door; unknown keys are faults. Plausibility is plausible.ts, names are resolve.ts. */
import * as z from 'zod/mini';
import { USES } from '../catalogue/design.ts';
import { MOUNTINGS } from '../catalogue/frame.ts';
import type { Fault } from './answer.ts';
import { BLANK_CHOICES, type QuoteRequest, WEARERS } from './request.ts';

const finite = z.number();
const optionalNullable = <T extends z.ZodMiniType>(type: T) => z.optional(z.nullable(type));
const civilDate = z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/), z.refine(isCivilDate));

function isCivilDate(text: string): boolean {
  const [year = 0, month = 0, day = 0] = text.split('-').map(Number);
  const days = month === 2 ? (isLeap(year) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;
  return month >= 1 && month <= 12 && day >= 1 && day <= days;
}

const isLeap = (year: number) => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

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

const request = z.strictObject({ ...order, pairs: z.array(pair).check(z.minLength(1), z.maxLength(20)) });

/** Keys that a bare package may carry beside its own. */
const ORDER_KEYS = Object.keys(order);

export type ReadRequest =
  | { readonly ok: true; readonly request: QuoteRequest }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** A request read from JSON; a bare package stands for one pair, and a missing date is `today`. */
export function readRequest(json: unknown, today: string): ReadRequest {
  const result = request.safeParse(whole(json, today));
  if (result.success) return { ok: true, request: result.data as QuoteRequest };
  return { ok: false, faults: result.error.issues.flatMap((issue) => issueFaults(issue, json)) };
}

function whole(json: unknown, today: string): unknown {
  if (typeof json !== 'object' || json === null || Array.isArray(json)) return json;
  if (!('frame' in json)) return { date: today, ...json };
  const pair: Record<string, unknown> = {};
  const rest: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(json)) (ORDER_KEYS.includes(key) ? rest : pair)[key] = value;
  return { date: today, ...rest, pairs: [pair] };
}

function issueFaults(issue: z.core.$ZodIssue, json: unknown): Fault[] {
  const bare = typeof json === 'object' && json !== null && 'frame' in json;
  const keys = bare && issue.path[0] === 'pairs' ? issue.path.slice(2) : issue.path;
  const path = keys.map(String).join('.');
  if (issue.code === 'invalid_union') {
    const nearest = issue.errors
      .map((issues) => issues.filter(({ path: inner }) => inner.length > 0))
      .find((issues) => issues.length > 0);
    if (nearest)
      return nearest.flatMap((inner) =>
        issueFaults({ ...inner, path: [...issue.path, ...inner.path] }, json),
      );
  }
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => ({
      path: path === '' ? key : `${path}.${key}`,
      message: 'This key is not known here.',
      expected: 'one of the keys that the request format has',
      found: key,
    }));
  return [
    {
      path: path === '' ? '(whole request)' : path,
      message: 'This value is not of the kind that is needed here.',
      expected: expectation(issue),
      found: shown(at(json, keys)),
    },
  ];
}

function expectation(issue: z.core.$ZodIssue): string {
  if (issue.code === 'invalid_type') return `a ${issue.expected}`;
  if (issue.code === 'invalid_value') return issue.values.map(String).join(', ');
  if (issue.code === 'invalid_format' || issue.code === 'custom') return 'a civil date such as 2026-11-25';
  if (issue.code === 'too_small') return `at least ${issue.minimum}`;
  if (issue.code === 'too_big') return `at most ${issue.maximum}`;
  if (issue.code === 'invalid_union') return 'one of the forms that the request format has';
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

/** Shape of the JSON at the one door; unknown keys are faults. Plausibility is plausible.ts, names are resolve.ts. */
import * as z from 'zod/mini';
import type { Offer } from '../catalogue/catalogue.ts';
import { isCivilDate } from '../catalogue/civilDate.ts';
import { USES } from '../catalogue/design.ts';
import { MOUNTINGS } from '../catalogue/frame.ts';
import { at, shapeFaults } from './againstSchema.ts';
import type { Fault } from './fault.ts';
import { nameFaults } from './names.ts';
import { eyeFaults, fitFaults } from './plausible.ts';
import { BLANK_CHOICES, type EyeRequest, type FitRequest, type QuoteRequest, WEARERS } from './request.ts';

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

/**
 * A request read from JSON; a bare package stands for one pair, and a missing date is `today`. Where its shape is wrong,
 * the ranges of what has its shape and, with the shop, the names are looked at as well: all faults in one go.
 */
export function readRequest(json: unknown, today: string, offer?: Offer): ReadRequest {
  const asked = whole(json, today);
  const result = requestSchema.safeParse(asked);
  if (result.success) return { ok: true, request: result.data as QuoteRequest };
  const shape = shapeFaults(result.error.issues, requestSchema, asked);
  return { ok: false, faults: asWritten(json, [...shape, ...meaningFaults(asked, offer)]) };
}

/** What can be said of parts that have their shape, in a request that does not. */
function meaningFaults(asked: unknown, offer: Offer | undefined): Fault[] {
  const pairs = at(asked, ['pairs']);
  if (!Array.isArray(pairs)) return [];
  return pairs.flatMap((one, index) => {
    const path = `pairs.${index}`;
    const eyes = (['right', 'left'] as const).flatMap((side) => {
      const read = eye.safeParse(at(one, ['prescription', side]));
      return read.success ? eyeFaults(read.data as EyeRequest, `${path}.prescription.${side}`) : [];
    });
    const measures = fit.safeParse(at(one, ['fit']));
    const worn = measures.success ? fitFaults(measures.data as FitRequest, `${path}.fit`) : [];
    return [...eyes, ...worn, ...(offer === undefined ? [] : nameFaults(offer, one, path))];
  });
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

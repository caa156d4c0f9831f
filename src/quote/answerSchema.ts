/** Shape of what the one door answers: the source of its JSON Schema, and held against real answers by a test. */
import * as z from 'zod/mini';
import { LINE_KINDS } from '../pricing/line.ts';
import { LEVELS } from '../rules/finding.ts';
import { VERDICTS } from './answer.ts';
import { CHANGE_KINDS } from './change.ts';

const number = z.number();
const nullable = z.nullable;

const power = z.strictObject({
  sphere: number,
  cylinder: number,
  axis: number,
  prism: nullable(z.strictObject({ amount: number, baseDeg: number })),
  add: nullable(number),
});

const place = z.strictObject({ mm: number, atDeg: number });

const lens = z.strictObject({
  ordered: power,
  compensated: nullable(power),
  baseCurveD: number,
  centreThicknessMm: number,
  governedBy: z.string(),
  edgeThicknessMm: z.strictObject({ thickest: place, thinnest: place }),
  beyondRimMm: number,
  massG: number,
  decentrationMm: z.strictObject({ in: number, up: number }),
  blank: z.strictObject({
    kind: z.enum(['stock', 'surfaced']),
    neededMm: number,
    usedMm: nullable(number),
    spareMm: nullable(number),
  }),
  estimate: nullable(z.string()),
});

const change = z.strictObject({
  kind: z.enum(CHANGE_KINDS),
  value: z.string(),
  size: z.optional(z.string()),
  colourway: z.optional(z.string()),
});

const finding = z.strictObject({
  rule: z.string(),
  level: z.enum(LEVELS),
  eye: z.enum(['right', 'left', 'both']),
  figures: z.record(z.string(), z.union([number, z.string()])),
  message: z.string(),
  remedy: nullable(z.strictObject({ change, message: z.string() })),
});

const pair = z.strictObject({
  verdict: z.enum(VERDICTS),
  findings: z.array(finding),
  right: nullable(lens),
  left: nullable(lens),
  alternatives: z.array(
    z.strictObject({
      aim: z.string(),
      changes: z.array(change),
      from: number,
      to: number,
      differenceMinor: nullable(z.int()),
      message: z.string(),
    }),
  ),
  wayOut: nullable(
    z.strictObject({ changes: z.array(change), differenceMinor: nullable(z.int()), message: z.string() }),
  ),
});

const line = z.strictObject({
  kind: z.enum(LINE_KINDS),
  pair: nullable(z.int()),
  label: z.string(),
  amount: z.int(),
  source: z.string(),
});

/** The answer as JSON. */
export const answerSchema = z.strictObject({
  verdict: z.enum(VERDICTS),
  pairs: z.array(pair),
  price: z.strictObject({
    currency: z.string(),
    lines: z.array(line),
    total: z.int(),
    codes: z.array(z.strictObject({ code: z.string(), used: z.boolean(), message: z.string() })),
  }),
});

/** What wrong input is answered with. */
export const faultsSchema = z.strictObject({
  faults: z.array(
    z.strictObject({ path: z.string(), message: z.string(), expected: z.string(), found: z.string() }),
  ),
});

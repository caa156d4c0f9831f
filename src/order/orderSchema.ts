/**
 * Shape and limits of an order file of version 1: unknown keys, other kinds of value and overlong texts are refused.
 * The request has the shape that it has at the one door.
 */
import * as z from 'zod/mini';
import { LINE_KINDS } from '../pricing/line.ts';
import { VERDICTS } from '../quote/answer.ts';
import { requestSchema } from '../quote/requestSchema.ts';
import { LEVELS } from '../rules/finding.ts';
import {
  MOST_LINE_LETTERS as LINE,
  MOST_ADDRESS_LINES,
  MOST_ATTACHED_BYTES,
  MOST_ATTACHMENTS,
  MOST_NAME_LETTERS,
  MOST_PROSE_LETTERS as PROSE,
  WORN_BASE_CURVES_D,
} from './limits.ts';
import { isOrderNumber } from './number.ts';
import { ATTACHMENT_TYPES, MEASURERS, ORDER_VERSION, VERSION_KEY } from './order.ts';
import { isPlainText } from './text.ts';

const text = (most: number, least = 0) =>
  z
    .string({ error: 'a text' })
    .check(
      z.minLength(least, { error: 'a text that is not empty' }),
      z.maxLength(most, { error: `a text of at most ${most} letters` }),
      z.refine(isPlainText, { error: 'a text without control characters' }),
    );

/** A text on one line. */
const lineText = (least = 0) =>
  text(LINE, least).check(z.refine((value) => !value.includes('\n'), { error: 'a text on one line' }));

const link = text(2000).check(z.regex(/^https:\/\//, { error: 'an address that begins with https://' }));

const number = z.number({ error: 'a number' });
const finite = (from: number, to: number) =>
  number.check(
    z.gte(from, { error: `a number from ${from} to ${to}` }),
    z.lte(to, { error: `a number from ${from} to ${to}` }),
  );
const minor = z
  .int({ error: 'a whole number of minor units' })
  .check(
    z.gte(-1e12, { error: 'an amount that a shop may ask' }),
    z.lte(1e12, { error: 'an amount that a shop may ask' }),
  );
const list = <T extends z.ZodMiniType>(item: T, most: number) =>
  z.array(item, { error: 'a list' }).check(z.maxLength(most, { error: `a list of at most ${most}` }));

const attachment = z.strictObject({
  name: text(MOST_NAME_LETTERS),
  type: z.enum(ATTACHMENT_TYPES),
  base64: z
    .string({ error: 'a text' })
    .check(
      z.minLength(4, { error: 'base64 of a file' }),
      z.maxLength(Math.ceil(MOST_ATTACHED_BYTES / 3) * 4, { error: `${MOST_ATTACHED_BYTES} bytes at most` }),
    ),
});

const pair = z.strictObject({
  wearer: lineText(1),
  prescription: z.nullable(
    z.strictObject({
      written: text(PROSE),
      prescriber: z.strictObject({ name: text(LINE), place: text(LINE) }),
      attachments: list(attachment, MOST_ATTACHMENTS),
    }),
  ),
  measuredBy: z.enum(MEASURERS),
  measuredNote: text(PROSE),
  confirmed: list(text(80, 1), 100),
  wornBaseCurveD: z.nullable(finite(WORN_BASE_CURVES_D.least, WORN_BASE_CURVES_D.most)),
});

const shownLens = z.strictObject({
  baseCurveD: finite(-30, 30),
  centreThicknessMm: finite(0, 100),
  thickestMm: finite(-100, 100),
  thinnestMm: finite(-100, 100),
  massG: finite(0, 1000),
});

const figures = z.record(text(60), z.union([number, text(LINE)], { error: 'a number or a text' }));

const shownPair = z.strictObject({
  verdict: z.enum(VERDICTS),
  findings: list(
    z.strictObject({
      rule: text(80, 1),
      level: z.enum(LEVELS),
      eye: z.enum(['right', 'left', 'both']),
      figures,
      message: text(PROSE),
    }),
    200,
  ),
  right: z.nullable(shownLens),
  left: z.nullable(shownLens),
});

const line = z.strictObject({
  kind: z.enum(LINE_KINDS),
  pair: z.nullable(z.int({ error: 'the index of a pair' })),
  label: text(PROSE),
  amount: minor,
  source: text(LINE),
});

/** An order file of version 1. */
export const orderSchema = z.strictObject({
  [VERSION_KEY]: z.literal(ORDER_VERSION),
  number: z
    .string({ error: '12 digits' })
    .check(z.refine(isOrderNumber, { error: '12 digits with the right check digits' })),
  shop: z.strictObject({
    name: text(LINE, 1),
    address: text(LINE),
    version: z
      .string({ error: 'a digest' })
      .check(z.regex(/^[0-9a-f]{64}$/, { error: '64 hexadecimal digits' })),
  }),
  buyer: z.strictObject({
    name: lineText(1),
    lines: list(lineText(1), MOST_ADDRESS_LINES),
    email: lineText(),
    phone: lineText(),
  }),
  request: requestSchema,
  pairs: list(pair, 20),
  shown: z.strictObject({
    verdict: z.enum(VERDICTS),
    pairs: list(shownPair, 20),
    price: z.strictObject({ currency: text(3, 3), lines: list(line, 500), total: minor }),
  }),
  consents: list(z.strictObject({ id: text(80, 1), text: text(PROSE, 1) }), 50),
  payment: z.nullable(
    z.strictObject({ id: text(80, 1), label: text(LINE), words: text(PROSE), link: z.nullable(link) }),
  ),
  notes: text(PROSE),
});

/** JSON Schema (draft 2020-12) of an order file, for other programs. */
export const orderJsonSchema = (): object => z.toJSONSchema(orderSchema);

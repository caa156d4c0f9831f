/** JSON Schemas of the content files, for the editors that the owner writes them in. */
import * as z from 'zod/mini';
import { TEXTS, type TranslatedKind } from '../translation/texts.ts';
import { helpKeywords } from './about.ts';
import { coatingSchema } from './coating.ts';
import { costsSchema } from './costs.ts';
import { designSchema } from './design.ts';
import { frameSchema } from './frame.ts';
import { importMappingSchema } from './importMapping.ts';
import { materialSchema } from './material.ts';
import { type Currency, moneyIn } from './money.ts';
import { outlineSchema } from './outline.ts';
import { pageSchema } from './page.ts';
import type { Schema } from './parse.ts';
import { promotionSchema } from './promotion.ts';
import { shopSchema } from './shop.ts';
import { tintSchema } from './tint.ts';
import { translationSchema } from './translation.ts';
import { wordsSchema } from './words.ts';

type Made = readonly [title: string, make: (money: ReturnType<typeof moneyIn>) => Schema<unknown>];

/** The kinds of file: what a file says, and its schema for a currency. */
const OWN = {
  shop: ['The shop, its habits, shipping, tax and collections', (money) => shopSchema(money)],
  frame: ['A frame', (money) => frameSchema(money)],
  outline: ['A traced outline', () => outlineSchema()],
  design: ['A lens design', (money) => designSchema(money)],
  material: ['A lens material', (money) => materialSchema(money)],
  tint: ['A tint', (money) => tintSchema(money)],
  coating: ['A coating', (money) => coatingSchema(money)],
  promotion: ['A promotion', (money) => promotionSchema(money)],
  page: ['A page of prose', () => pageSchema()],
  words: ['Sentences and labels', () => wordsSchema()],
  costs: ['What things cost the shop, which is never published', (money) => costsSchema(money)],
  mapping: ['Which column of a table is which field of the shop', () => importMappingSchema()],
} as const satisfies Record<string, Made>;

/** A kind of file that the owner writes; the texts of another language are kinds of their own. */
export type FileKind = keyof typeof OWN | `translation-${TranslatedKind}`;

const TRANSLATIONS = Object.fromEntries(
  Object.entries(TEXTS).map(([of, texts]): [string, Made] => [
    `translation-${of}`,
    [`Texts in another language: ${of}`, () => translationSchema(texts)],
  ]),
) as Record<`translation-${TranslatedKind}`, Made>;

const KINDS: Readonly<Record<FileKind, Made>> = { ...OWN, ...TRANSLATIONS };

/** All kinds of file. */
export const FILE_KINDS = Object.keys(KINDS) as readonly FileKind[];

/** What the reader takes a kind of file with, its prices in `currency`. */
export function fileSchema(kind: FileKind, currency: Currency): Schema<unknown> {
  return KINDS[kind][1](moneyIn(currency));
}

/** JSON Schema (draft 7, which editors know best) of one kind of file, its prices in `currency`. */
export function editorSchema(kind: FileKind, currency: Currency): object {
  const schema = z.toJSONSchema(fileSchema(kind, currency), {
    io: 'input',
    target: 'draft-07',
    // A part that is used twice is written out twice: each has its own description.
    reused: 'inline',
    override: ({ zodSchema, jsonSchema }) => {
      Object.assign(jsonSchema, helpKeywords(zodSchema));
      if (!isWritten(zodSchema, jsonSchema.default)) delete jsonSchema.default;
    },
  });
  return { title: KINDS[kind][0], ...schema };
}

/** Whether a default is what an owner would write: a reading may turn it into something else. */
function isWritten(schema: z.core.$ZodType, value: unknown): boolean {
  if (value === undefined || (typeof value === 'object' && value !== null && !Array.isArray(value)))
    return false;
  return z.safeParse(schema, value).success;
}

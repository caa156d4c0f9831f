/** What the mapping file of an import holds: which column of a CSV file is which field of the shop. */
import * as z from 'zod/mini';
import { about, expects } from './about.ts';
import { fields, oneOf, orElse, orNull, text } from './fields.ts';

/** Fields of one row of frames: a size in a colourway. */
export const FRAME_FIELDS = [
  'id',
  'model',
  'collection',
  'summary',
  'price',
  'material',
  'wearer',
  'sun',
  'mounting',
  'rimDepthMm',
  'rimCoverMm',
  'faceFormDeg',
  'frameCurveD',
  'massG',
  'comesFitted',
  'inTheBox',
  'story',
  'size',
  'a',
  'b',
  'dbl',
  'ed',
  'temple',
  'bridge',
  'family',
  'traced',
  'sizePriceDifference',
  'colourway',
  'colourwayCode',
  'colour',
  'colourwayPriceDifference',
  'stock',
] as const;

/** Fields of one row of a price list. */
export const PRICE_FIELDS = ['id', 'price', 'kind'] as const;

const FIELDS = [...new Set([...FRAME_FIELDS, ...PRICE_FIELDS])] as const;
export type ImportField = (typeof FIELDS)[number];

const texts = <Value extends z.core.$ZodType>(value: Value, expected: string) =>
  z.record(z.string(), value, { error: expected });

/** One of the signs, which a list without quotes would hide. */
const sign = <const Signs extends readonly string[]>(signs: Signs, expected: string) =>
  expects(expected, z.enum(signs, { error: expected }));

/** Schema of a mapping. */
export function importMappingSchema() {
  const field = oneOf(FIELDS);
  return fields({
    separator: about(
      'Between the columns. Default null: the one that the first line has most of.',
      orNull(sign([',', ';', 'tab'], '",", ";" or tab')),
    ),
    decimal: about(
      'Sign before the decimals of numbers and prices. Default ".".',
      orElse(sign(['.', ','], '"." or ",", in quotes'), '.'),
    ),
    encoding: about('Default utf-8.', orElse(oneOf(['utf-8', 'windows-1252']), 'utf-8')),
    columns: about(
      'Heading of a column: field of the shop. Columns that are not named are passed over.',
      texts(field, 'headings with their fields, such as "Price (USD)": price'),
      { Model: 'model', 'Price (USD)': 'price' },
    ),
    fixed: about(
      'Fields that are the same in every row.',
      orElse(texts(z.union([text(), z.number(), z.boolean()]), 'fields with their values'), {}),
      { collection: 'saltmarsh' },
    ),
    values: about(
      'For a field: word of the file to word of the shop.',
      orElse(texts(texts(text(), 'words with their words'), 'fields with their words'), {}),
      { bridge: { 'Saddle bridge': 'saddle' } },
    ),
  });
}

/** A mapping as it is read. */
export type ImportMapping = z.infer<ReturnType<typeof importMappingSchema>>;

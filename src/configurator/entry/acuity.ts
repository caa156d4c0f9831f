/** How well somebody sees, beside the powers of a prescription: `VA 20/20`, `6/6`, `cc`. No lens is made of it. */
import type { Span } from './contactLens.ts';

/** Of a named acuity any fraction or decimal, as `AV 10/10` or `VA 0.8`. */
const NAMED =
  '(?:B?C?VA|UCVA|AV|V\\.A\\.?|visual\\s+acuity|acuité(?:\\s+visuelle)?)(?!\\p{L})\\s*[:=]?\\s*(?:(?:cc|sc)(?!\\p{L})\\s*)?(?:\\d{1,2}(?:[.,]\\d+)?(?:\\s*/\\s*\\d{1,3}(?:[.,]\\d+)?)?(?:[+-]\\d(?![\\d.,]))?(?![\\d.,]*\\d))?';
/** Without a name those of 20 feet and 6 metres alone. */
const SNELLEN = '(?:20/\\d{2,3}|6/\\d{1,2}(?:[.,]\\d)?)(?:[+-]\\d(?![\\d.,]))?(?!\\d)';
/** With and without correction. */
const CORRECTED = '(?:cc|sc|c\\.c\\.|s\\.c\\.)(?![\\p{L}\\d])';
/** What names a figure behind it: then it is an axis, an add or a prism, however it goes on. */
const NAMED_ELSE =
  '(?:x|×|\\*|ax|axis|axe|à|@|add|addition|prism|prisme|base|B[IOUD]|sph|cyl|P\\.?D\\.?)[\\s.:=]*';
/** What makes a prism or a date of the figure before it. */
const ELSE_BEHIND = '(?!\\s*(?:/|[∆Δ^]|(?:B[IOUD]|base|in|out|up|down|prism|pd)(?!\\p{L})))';
const ACUITY = new RegExp(
  `(?<![\\p{L}\\d.,/+\\-\\u2212\\u2013])(?<!${NAMED_ELSE})(?:${NAMED}|${SNELLEN}|${CORRECTED})${ELSE_BEHIND}`,
  'giu',
);

/** Where a text says how well somebody sees, in its order. */
export function acuities(text: string): readonly Span[] {
  return [...text.matchAll(ACUITY)].map(({ 0: found, index }) => ({
    start: index,
    end: index + found.trimEnd().length,
  }));
}

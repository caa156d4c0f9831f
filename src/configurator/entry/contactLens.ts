/** Tells a prescription for contact lenses from one for glasses by the two figures that only the former has. */

/** A stretch of a text: offsets of its first character and of the one behind its last. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** Base curves and diameters of contact lenses, mm (common practice); base curves of glasses are in dioptres. */
const BASE_CURVE_MM = { from: 7, to: 10 };
const DIAMETER_MM = { from: 8.5, to: 17 };

const BASE_CURVE =
  /(?<![\p{L}\d])(?:B\.?C\.?(?:\.?R\.?)?|base\s*curve)(?![\p{L}])[\s:=]*(?<mm>\d{1,2}(?:[.,]\d+)?)(?:\s*mm)?/giu;
const DIAMETER =
  /(?<![\p{L}\d])(?:DIA(?:M|METER)?\.?|D\.?I\.?A\.?|\u2300)(?![\p{L}])[\s:=]*(?<mm>\d{1,2}(?:[.,]\d+)?)(?:\s*mm)?/giu;
/** Both without a name, as on a box: `8.6 / 14.2`. */
const BARE =
  /(?<![\d.,+\-\u2212\u2013])(?<mm>[789][.,]\d{1,2})\s*(?:mm)?\s*[/,;x\u00d7\s]\s*(?<mm2>1[2-6][.,]\d{1,2})(?![\d.,])/giu;
const PD =
  /(?<!\d[^\S\n]*)(?<!\p{L})(?:P\.?D|D\.?P|[ÉE]\.?P|pupil\w*\s+distance|(?:écart|distance)\s+(?:inter)?pupillaire)(?!\p{L})[\s.:=]*\d/iu;

/**
 * Where a text gives the base curve and diameter of a contact lens, in the order of the text; empty where it does
 * not give both, or gives a PD, which only glasses need.
 */
export function contactLensFigures(text: string): readonly Span[] {
  if (PD.test(text)) return [];
  const curves = within(text, BASE_CURVE, BASE_CURVE_MM);
  const diameters = within(text, DIAMETER, DIAMETER_MM);
  const bare = within(text, BARE, BASE_CURVE_MM);
  if (bare.length === 0 && (curves.length === 0 || diameters.length === 0)) return [];
  return [...curves, ...diameters, ...bare].sort((one, other) => one.start - other.start);
}

function within(text: string, form: RegExp, { from, to }: { from: number; to: number }): Span[] {
  return [...text.matchAll(form)]
    .filter(({ groups }) => {
      const mm = Number(groups?.['mm']?.replace(',', '.'));
      return mm >= from && mm <= to;
    })
    .map(({ 0: found, index }) => ({ start: index, end: index + found.trimEnd().length }));
}

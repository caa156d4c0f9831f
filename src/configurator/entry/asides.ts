/** What a pasted prescription says beside the powers: PD, near PD, vertex distance, date; and lines that say nothing. */
import { isCivilDate } from '../../catalogue/civilDate.ts';
import type { Entries } from '../fields.ts';
import type { Span } from './contactLens.ts';

export interface Asides {
  readonly entries: Entries;
  /** Lines that hold nothing of a prescription, such as a name or a heading. */
  readonly unused: readonly Span[];
  /** The text with all of these blanked out, each character by a space: offsets stay. */
  readonly rest: string;
}

/** A PD is of both eyes whether it says so or not; behind it only where no figure follows that would be of both too. */
const OU = '(?:O\\.?U\\.?|ODG|BE|both(?:\\s+eyes)?)';
const OU_BEFORE = `(?:(?<!add\\p{L}*[\\s:=]*\\+?[\\d.,]+\\s*D?S?\\s*)${OU}\\s+)?`;
const OU_WITHIN = `(?:${OU}\\s*[:=]?\\s*)?`;
const OU_BEHIND = `(?:\\s*${OU}(?=\\s*(?:$|[\\r\\n;,/)])))?`;
const NUMBER = '([1-8]\\d(?:[.,]\\d+)?)(?!\\d)';
const PAIR = `${NUMBER}(?:\\s*mm)?(?:\\s*[/&|]\\s*${NUMBER})?(?:\\s*mm)?`;
/** PD also is a unit of prism: then a base follows it, and not millimetres. */
/** Écart pupillaire, or distance pupillaire. */
const FRENCH_PD = '(?:D\\.?P\\.?|[ÉE]\\.?P\\.?|(?:écart|distance)\\s+(?:inter)?pupillaire)';
const AT_ITS_PLACE = '(?<![\\p{L}.])';
const FORMS = {
  nearPd: new RegExp(
    `${AT_ITS_PLACE}${OU_BEFORE}(?:(?:near|reading)\\s+P\\.?D\\.?|${FRENCH_PD}\\s+(?:de\\s+près|VP))\\s*[:=]?\\s*${OU_WITHIN}${PAIR}${OU_BEHIND}`,
    'iu',
  ),
  pd: new RegExp(
    `${AT_ITS_PLACE}${OU_BEFORE}(?:(?:distance|dist|far)\\.?\\s+)?(?:P\\.?D\\.?|pupil\\w*\\s+distance|${FRENCH_PD}(?:\\s+(?:de\\s+loin|VL))?)\\s*[:=]?\\s*${OU_WITHIN}${PAIR}${OU_BEHIND}`,
    'iu',
  ),
  vertex:
    /(?<![\p{L}.])(?:B\.?V\.?D|vertex(?:\s+distance)?|distance\s+vertex)\.?\s*[:=]?\s*(\d{1,2}(?:[.,]\d+)?)(?:\s*mm)?/iu,
  date: /(?:(?<!\p{L})(?:issued|dated?|examined|exam|émise?|le)(?:\s+(?:on|le|du))?\s*[:=]?\s*)?(?<!\d)(\d{4}-\d{2}-\d{2})(?!\d)/iu,
};

/** Half a PD is below this, a whole one above, mm. */
const LARGEST_HALF_MM = 43;

/** First words of lines about people and papers. */
const ABOUT_ELSE =
  /^(?:patient|name|born|dob|d\.o\.b|date\s+of\s+birth|doctor|dr|prescriber|optometrist|address|phone|tel|expir\w*|exp|valid|licen[sc]e|rx\s*(?:no|number|#)|signed|signature|nom|prénom|naissance|née?|docteure?|adresse|téléphone|échéance)(?!\p{L})/iu;
const NAMES_AN_EYE =
  /(?<!\p{L})(?:o\.?d|o\.?s|o\.?g|o\.?u|odg|droit|gauche|re|le|be|r|l|right|left|both)(?!\p{L})/iu;

/** All that can be told apart from the powers. */
export function readAsides(text: string): Asides {
  const entries: Record<string, string> = {};
  let rest = text;
  const take = (form: RegExp): readonly string[] | null => {
    const found = form.exec(rest);
    if (found === null) return null;
    rest = blanked(rest, { start: found.index, end: found.index + found[0].length });
    return found.slice(1).filter((part) => part !== undefined);
  };
  // Before the PD, whose name is part of its own.
  const near = take(FORMS.nearPd);
  const far = take(FORMS.pd);
  Object.assign(entries, pdEntries('pd', far ?? []), pdEntries('nearPd', near ?? []));
  const vertex = take(FORMS.vertex)?.[0];
  if (vertex !== undefined) entries['vertexTested'] = vertex;
  const date = FORMS.date.exec(rest)?.[1];
  if (
    date !== undefined &&
    isCivilDate(date) &&
    !/born|dob|birth|exp|valid|naissance|n[ée]+e?\s+le/i.test(lineAt(rest, rest.indexOf(date)))
  ) {
    take(FORMS.date);
    entries['issued'] = date;
  }
  const unused = linesOf(rest).filter((line) => saysNothing(rest.slice(line.start, line.end)));
  return { entries, unused, rest: unused.reduce(blanked, rest) };
}

/** `31.5/32` is each eye's; `63/60` is for distance and near; one number is for both eyes. The other way is emptied. */
function pdEntries(name: 'pd' | 'nearPd', [first, second]: readonly string[]): Entries {
  if (first === undefined) return {};
  const size = (text: string) => Number(text.replace(',', '.'));
  if (second !== undefined && size(first) <= LARGEST_HALF_MM)
    return { 'pd.mode': 'each', [`${name}.right`]: first, [`${name}.left`]: second, [`${name}.both`]: '' };
  const near: Entries = second === undefined || name === 'nearPd' ? {} : { 'nearPd.both': second };
  const each = { [`${name}.right`]: '', [`${name}.left`]: '' };
  return { 'pd.mode': 'both', [`${name}.both`]: first, ...each, ...near };
}

/** A line about something else, or one without any figure that names no eye: headings. */
function saysNothing(line: string): boolean {
  const plain = line.trim();
  if (plain === '') return false;
  if (ABOUT_ELSE.test(plain)) return true;
  return !/\d/.test(plain) && !NAMES_AN_EYE.test(plain) && /\p{L}{2}/u.test(plain);
}

function linesOf(text: string): Span[] {
  return [...text.matchAll(/[^\r\n;]+/g)].map(({ 0: line, index }) => {
    const start = index + line.length - line.trimStart().length;
    return { start, end: index + line.trimEnd().length };
  });
}

function lineAt(text: string, at: number): string {
  const start = Math.max(text.lastIndexOf('\n', at), text.lastIndexOf(';', at)) + 1;
  return text.slice(start, at);
}

/** The text with a stretch of it blanked out; its length stays. */
export const blanked = (text: string, { start, end }: Span): string =>
  text.slice(0, start) + text.slice(start, end).replace(/[^\r\n]/g, ' ') + text.slice(end);

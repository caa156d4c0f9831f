/**
 * HTML as strings. Whatever stands in a hole of a template is text: it is escaped here and nowhere else, and only
 * what this file made itself goes in as it is.
 */

/** HTML that `html` made. */
export interface Markup {
  readonly markup: string;
}

export type Part = string | number | null | false | Markup | readonly Part[];

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Control characters, and marks that turn the reading order of what stands beside them. */
const UNSEEN = /[\p{Cc}\u200E\u200F\u202A-\u202E\u2066-\u2069]/gu;

/** Text as HTML, for elements and quoted attributes. Lines stay apart; unseen characters that mislead are dropped. */
export function escapeText(text: string): string {
  return text
    .replace(/\r\n?/g, '\n')
    .replace(UNSEEN, (mark) => (mark === '\n' || mark === '\t' ? mark : ''))
    .replace(/[&<>"']/g, (character) => ENTITIES[character] ?? '');
}

function written(part: Part): string {
  if (part === null || part === false) return '';
  if (typeof part === 'string') return escapeText(part);
  if (typeof part === 'number') return String(part);
  return 'markup' in part ? part.markup : part.map(written).join('');
}

/** A template of HTML: its own text as it stands, its holes escaped; null and false leave nothing. */
export function html(strings: TemplateStringsArray, ...parts: readonly Part[]): Markup {
  const last = strings.length - 1;
  const text = strings.map((string, i) => string + (i < last ? written(parts[i] ?? null) : ''));
  return { markup: text.join('') };
}

/** Text no wider than about `most` small letters, with an ellipsis where it was longer: a page stays one page. */
export function shortened(text: string, most: number): string {
  const characters = [...text.trim()];
  let width = 0;
  const end = characters.findIndex((character) => {
    width += letterWidth(character);
    return width > most;
  });
  return end < 0 ? characters.join('') : `${characters.slice(0, Math.max(0, end - 1)).join('')}…`;
}

/** Width of a character in small letters, roughly: capitals are wide, and East Asian characters twice as wide. */
function letterWidth(character: string): number {
  if ((character.codePointAt(0) ?? 0) > 0x2e7f) return 2;
  return /[\p{Lu}@%&]/u.test(character) ? 1.7 : 1;
}

/** Small letters that stand in a line across the page. */
const PER_LINE = 105;

/** The sentences that fit in so many lines across the page, and how many more there are. The first always does. */
export function fitting(sentences: readonly string[], lines: number): { shown: string[]; more: number } {
  const shown: string[] = [];
  let left = lines;
  for (const sentence of sentences) {
    const width = [...sentence].reduce((sum, character) => sum + letterWidth(character), 0);
    left -= Math.ceil(width / PER_LINE);
    if (left < 0 && shown.length > 0) break;
    shown.push(shortened(sentence, lines * PER_LINE));
    if (left < 0) break;
  }
  return { shown, more: sentences.length - shown.length };
}

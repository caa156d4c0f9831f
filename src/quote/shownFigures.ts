/**
 * Figures as a sentence shows them: powers (`...D`) signed with two decimals, amounts in dioptres (`...AbsD`) without a
 * sign, days in words, the rest as short as they are exact.
 */
import type { Words } from '../catalogue/catalogue.ts';
import { isCivilDate } from '../catalogue/civilDate.ts';
import { dayInWords } from '../catalogue/dayInWords.ts';
import { say, writeDigits } from '../catalogue/words.ts';
import type { Figures } from '../rules/finding.ts';

/** Texts for the slots of a sentence; the unit belongs to the sentence. */
export function shownFigures(words: Words, language: string, figures: Figures): Record<string, string> {
  return Object.fromEntries(
    Object.entries(figures).map(([key, value]) => [key, shown(words, language, key, value)]),
  );
}

function shown(words: Words, language: string, key: string, value: number | string): string {
  if (key === 'use') return say(words, `use.${value}`);
  if (key === 'serves')
    return String(value)
      .split(', ')
      .map((use) => say(words, `use.${use}`))
      .join(', ');
  // A power as written, in print: a true minus and a true times.
  if (key === 'order' || key === 'prescribed')
    return writeDigits(words, String(value).replaceAll('-', '\u2212').replace(' x ', ' \u00d7 '));
  if (typeof value === 'string') return isCivilDate(value) ? dayInWords(value, language) : value;
  const text = key.endsWith('AbsD') ? value.toFixed(2) : /[a-z]D$/.test(key) ? power(value) : String(value);
  return writeDigits(words, text);
}

/** As written on a prescription: a sign and two decimals. */
function power(valueD: number): string {
  const text = Math.abs(valueD).toFixed(2);
  return valueD > 0 ? `+${text}` : valueD < 0 ? `\u2212${text}` : text;
}

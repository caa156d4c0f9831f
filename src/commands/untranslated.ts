/** What a language of the shop lacks, as the owner reads it: sentences by file first, then texts of the content. */
import { printFault } from '../catalogue/printFaults.ts';
import type { MissingWords, Untranslated } from '../catalogue/translation/untranslated.ts';

/** Widest excerpt of a sentence, in characters. */
const WIDEST = 90;

const count = (number: number, one: string, many: string) => `${number} ${number === 1 ? one : many}`;

/** All that lags behind in a language; '' where nothing does. */
export function printUntranslated({ missingWords, words, texts }: Untranslated): string {
  const told = [...missingWords.map(printMissing), ...words.map(printFault), ...texts.map(printFault)];
  const sentences = missingWords.reduce((sum, one) => sum + one.texts.length, words.length);
  if (told.length === 0) return '';
  const closing =
    `Not in step with the first language: ${count(sentences, 'sentence', 'sentences')} of the interface, ` +
    `${count(texts.length, 'text', 'texts')} of the content. Until then the shop shows the first language there.`;
  return [...told, closing].join('\n\n');
}

function printMissing({ file, own, texts }: MissingWords): string {
  const lines = texts.map(({ key, text }) => `  ${key}: ${shortened(text)}`);
  return [`${file} lacks ${count(texts.length, 'text', 'texts')} of ${own}:`, ...lines].join('\n');
}

const shortened = (text: string) => {
  const line = text.trim().replace(/\s+/g, ' ');
  return line.length > WIDEST ? `${line.slice(0, WIDEST)}…` : line;
};

/** Words of the parts that are loaded on demand, as one file for all pages of a language. */
import { filesByLanguage } from '../dataFile.ts';

const WORDS = /^(?:link|opened|damaged|aside|compare|basket|number|worksheet\.drawing)\./;

export const keepingWordsFile = await filesByLanguage(({ words }) =>
  JSON.stringify(Object.fromEntries(Object.entries(words).filter(([key]) => WORDS.test(key)))),
);

/** Where those words lie in a language. */
export const keepingWordsPath = (language: string): string =>
  `/keeping-words/${keepingWordsFile(language).digest}.json`;

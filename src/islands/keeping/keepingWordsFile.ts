/** Words of the parts that are loaded on demand, as one file; its name changes with its content. */
import { catalogue } from 'virtual:bevelbook/catalogue';
import { contentDigest } from '../contentDigest.ts';

const WORDS = /^(?:link|opened|damaged|aside|compare|basket)\./;

export const keepingWordsText: string = JSON.stringify(
  Object.fromEntries(Object.entries(catalogue.words).filter(([key]) => WORDS.test(key))),
);

export const keepingWordsDigest: string = await contentDigest(keepingWordsText);

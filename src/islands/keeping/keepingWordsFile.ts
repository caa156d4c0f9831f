/** Words of the parts that are loaded on demand, as one file; its name changes with its content. */
import { createHash } from 'node:crypto';
import { catalogue } from 'virtual:bevelbook/catalogue';

const WORDS = /^(?:link|opened|damaged|aside|compare|basket)\./;

/** The words as JSON. */
export const keepingWordsText: string = JSON.stringify(
  Object.fromEntries(Object.entries(catalogue.words).filter(([key]) => WORDS.test(key))),
);

/** The first part of the content's digest. */
export const keepingWordsDigest: string = createHash('sha256')
  .update(keepingWordsText)
  .digest('hex')
  .slice(0, 16);

/** The files that other languages are made of, read with their schemas. */
import type { Entry } from '../reading/origin.ts';
import type { Translated } from '../schema/translation.ts';
import type { WordsTree } from '../schema/words.ts';
import type { TranslatedKind } from './texts.ts';

/** A file of sentences; its name says nothing. */
export interface WordsFile {
  readonly language: string;
  readonly entry: Entry<WordsTree>;
}

/** The texts of one noun in another language. */
export interface Translation {
  readonly language: string;
  readonly of: TranslatedKind;
  readonly entry: Entry<Translated>;
}

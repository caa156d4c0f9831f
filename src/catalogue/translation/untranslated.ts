/** What a translation lags behind in. Nothing of it stops the shop: the first language stands in. */
import type { ContentFault } from '../fault.ts';

/** Sentences of one file of the first language that another one lacks. */
export interface MissingWords {
  readonly language: string;
  /** Where they belong. */
  readonly file: string;
  /** Where they stand in the first language. */
  readonly own: string;
  readonly texts: readonly { readonly key: string; readonly text: string }[];
}

export interface Untranslated {
  readonly missingWords: readonly MissingWords[];
  /** Sentences of the interface that are left over, or whose slots differ. */
  readonly words: readonly ContentFault[];
  /** Texts of the shop's content. */
  readonly texts: readonly ContentFault[];
}

import type { Catalogue } from './catalogue.ts';
import type { ContentFault } from './fault.ts';
import type { Untranslated } from './translation/untranslated.ts';

/** The shop, or all that is wrong with its content, sorted by place. Never half a shop. */
export type Reading =
  | {
      readonly ok: true;
      readonly catalogue: Catalogue;
      /** The same shop in its other languages, in their order. */
      readonly translations: readonly Catalogue[];
      /** What each of them lags behind in. */
      readonly untranslated: readonly Untranslated[];
      /** What an owner should know and no shopper sees: names that are understood, but out of date. */
      readonly notes: readonly ContentFault[];
    }
  | { readonly ok: false; readonly faults: readonly ContentFault[] };

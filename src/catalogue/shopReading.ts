import type { Catalogue } from './catalogue.ts';
import type { ContentFault } from './fault.ts';

/** The shop, or all that is wrong with its content, sorted by place. Never half a shop. */
export type Reading =
  | { readonly ok: true; readonly catalogue: Catalogue }
  | { readonly ok: false; readonly faults: readonly ContentFault[] };

/** The shop, as src/catalogue/astro.ts gives it to pages at build time. */
declare module 'virtual:bevelbook/catalogue' {
  import type { Catalogue } from './catalogue.ts';

  /** The whole catalogue of the content folder. */
  export const catalogue: Catalogue;
}

/** The shop, as src/catalogue/astro.ts gives it to pages at build time. */
declare module 'virtual:bevelbook/catalogue' {
  /** The whole catalogue of the content folder. An import at the top would make this file a module of its own. */
  export const catalogue: import('./catalogue.ts').Catalogue;
  /** The same shop in its other languages. */
  export const translations: readonly import('./catalogue.ts').Catalogue[];
}

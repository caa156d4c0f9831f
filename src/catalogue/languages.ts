/** The languages of a shop: which addresses each has, and the catalogue that speaks it. */
import type { Catalogue } from './catalogue.ts';
import type { Shop } from './shop.ts';

/**
 * The first part of the addresses of a language's pages: `fr` for fr-CA, `fr-ca` where another language of the shop
 * begins alike, undefined for the shop's first language.
 */
export function languageSegment(language: string, languages: readonly string[]): string | undefined {
  if (language === languages[0]) return undefined;
  const primary = (tag: string) => tag.split('-')[0] ?? tag;
  const alike = languages.filter((one) => primary(one) === primary(language)).length > 1;
  return alike ? language.toLowerCase() : primary(language);
}

/** The address of a page in the language of a shop, from its address in the shop's own, such as `/basket/`. */
export const pageHref = (shop: Pick<Shop, 'path'>, path: string): string => shop.path + path;

/** What a reading of the content has in each language. */
export interface Spoke {
  readonly catalogue: Catalogue;
  readonly translations: readonly Catalogue[];
}

/** The shop in a language; the first where none is named, undefined where the shop does not have it. */
export function inLanguage({ catalogue, translations }: Spoke, language?: string): Catalogue | undefined {
  if (language === undefined) return catalogue;
  return [catalogue, ...translations].find(({ shop }) => shop.language === language);
}

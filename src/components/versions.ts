/** The page as it is in each language of the shop. */
import { type ShopWords, spoken } from './shopWords.ts';

export interface Version {
  readonly language: string;
  /** Its address on the site. */
  readonly path: string;
  /** Its absolute address. */
  readonly address: string;
  /** The language's own name for itself. */
  readonly name: string;
  /** Whether this is the page that is shown. */
  readonly shown: boolean;
}

/** The versions of the page at `pathname`, the shop's first language first. */
export function versionsOf(shown: ShopWords, pathname: string): readonly Version[] {
  const path = pathname.slice(shown.href('').length);
  return spoken.map((words) => {
    const { address, language } = words.catalogue.shop;
    return {
      language,
      path: words.href(path),
      address: `${address}${words.href(path)}`,
      name: words.t('language.name'),
      shown: words === shown,
    };
  });
}

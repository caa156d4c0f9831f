/** The menu: frames, lenses and offers, then the prose pages that ask for a place. */
import type { ShopWords } from './shopWords.ts';

export interface MenuEntry {
  readonly href: string;
  readonly text: string;
}

/** What the shop sells, in this order. */
export const goods = ({ t, href }: ShopWords): readonly MenuEntry[] => [
  { href: href('/frames/'), text: t('menu.frames') },
  { href: href('/lenses/'), text: t('menu.lenses') },
  { href: href('/promotions/'), text: t('menu.promotions') },
];

/** The basket; `count` is what a page with a script says instead once pairs are in it. */
export const basket = ({ t, href }: ShopWords): MenuEntry & { readonly count: string } => ({
  href: href('/basket/'),
  text: t('menu.basket'),
  count: t('menu.basketCount', { count: '{count}' }),
});

/** Prose pages that ask for a place in the menu, by their place. */
export const prose = ({ catalogue, href }: ShopWords): readonly MenuEntry[] =>
  catalogue.pages
    .filter((page) => page.menu !== null)
    .sort((a, b) => (a.menu ?? 0) - (b.menu ?? 0))
    .map(({ slug, title }) => ({ href: href(`/${slug}/`), text: title }));

/** `page` on the entry's own page, `true` on a page below it, undefined elsewhere: for `aria-current`. */
export function ariaCurrent(href: string, pathname: string): 'page' | 'true' | undefined {
  if (href === pathname) return 'page';
  return pathname.startsWith(href) ? 'true' : undefined;
}

/** A prose page by its slug, when the shop has it. */
export function prosePage({ catalogue, href }: ShopWords, slug: string): MenuEntry | null {
  const page = catalogue.pages.find((p) => p.slug === slug);
  return page ? { href: href(`/${page.slug}/`), text: page.title } : null;
}

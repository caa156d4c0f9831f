/** The pages that search engines should know: every one that does not ask to be left out. */
import type { Catalogue } from '../catalogue/catalogue.ts';
import { ORDERS } from '../components/frameOrders.ts';
import type { ListedPage } from './sitemap.ts';

const later = (a: string | null, b: string | null): string | null =>
  a === null || (b !== null && b > a) ? b : a;

/** All listed pages of a shop, home first. */
export function listedPages(catalogue: Catalogue): readonly ListedPage[] {
  const { shop, collections, frames, pages, designs, materials, tints, coatings } = catalogue;
  const lenses = Object.entries({ designs, materials, tints, coatings }).flatMap(([kind, options]) =>
    options.map(({ id }) => `/lenses/${kind}/${id}/`),
  );
  const plain = [
    '/',
    '/frames/',
    ...ORDERS.map((order) => `/frames-by/${order}/`),
    ...collections.map(({ id }) => `/collections/${id}/`),
    '/lenses/',
    ...lenses,
    '/promotions/',
    ...(shop.ownFrame ? ['/your-frame/'] : []),
    '/measuring-rule/',
    '/reasons/',
    ...pages.map(({ slug }) => `/${slug}/`),
  ];
  return [
    ...plain.map((path) => ({ path, changed: null })),
    ...frames.map(({ id, added, changed }) => ({ path: `/frames/${id}/`, changed: later(added, changed) })),
  ];
}

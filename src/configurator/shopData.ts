/** What the browser needs of the shop besides one frame: one file for all pages, without stories and page words. */
import type { Offer, Words } from '../catalogue/catalogue.ts';

export type ShopData = Omit<Offer, 'frames'>;

/** The drawings come later, with their words. */
const WORDS =
  /^(?:rule|eye|use|worn|verdict|price|remedy|alternative|way-out|worksheet(?!\.drawing\.)|showing|number)\./;

/** The part of an offer that goes to the browser. Stories stay on their own pages. */
export function shopData(offer: Offer): ShopData {
  const untold = <T extends { readonly story: string }>(all: readonly T[]): T[] =>
    all.map((one) => ({ ...one, story: '' }));
  const words: Words = Object.fromEntries(Object.entries(offer.words).filter(([key]) => WORDS.test(key)));
  return {
    shop: offer.shop,
    designs: untold(offer.designs),
    materials: untold(offer.materials),
    tints: untold(offer.tints),
    coatings: untold(offer.coatings),
    promotions: untold(offer.promotions),
    words,
  };
}

/** A shop that is built for another path of its host than its address has. */
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Reading } from '../catalogue/shopReading.ts';

/** The reading with `base`, such as `/shop/`, in the address, in each language. */
export function movedShop(reading: Extract<Reading, { readonly ok: true }>, base: string): Reading {
  const moved = (catalogue: Catalogue): Catalogue => {
    const address = new URL(base, catalogue.shop.address).href.replace(/\/$/, '');
    return { ...catalogue, shop: { ...catalogue.shop, address } };
  };
  return { ...reading, catalogue: moved(reading.catalogue), translations: reading.translations.map(moved) };
}

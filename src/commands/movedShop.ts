/** A shop that is built for another path of its host than its address has. */
import type { Reading } from '../catalogue/shopReading.ts';

/** The reading with `base`, such as `/shop/`, in the address. Editors of the shop's files see no change. */
export function movedShop(reading: Extract<Reading, { readonly ok: true }>, base: string): Reading {
  const { catalogue } = reading;
  const address = new URL(base, catalogue.shop.address).href.replace(/\/$/, '');
  return { ...reading, catalogue: { ...catalogue, shop: { ...catalogue.shop, address } } };
}

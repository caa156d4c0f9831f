/** Which state of the shop an order was made from. */
import type { Offer } from '../catalogue/catalogue.ts';
import { digestOf } from './digest.ts';

/**
 * SHA-256 of all that verdicts, figures and prices follow from, as 64 hexadecimal digits. Words and the terms of
 * ordering are left out: the order carries those itself, and a new key makes no new price.
 */
export function shopVersion(offer: Offer): Promise<string> {
  const { shop, frames, designs, materials, tints, coatings, promotions } = offer;
  const { order: _, ...selling } = shop;
  const data = [selling, frames, designs, materials, tints, coatings, promotions];
  return digestOf(new TextEncoder().encode(JSON.stringify(data)));
}

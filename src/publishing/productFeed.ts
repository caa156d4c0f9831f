/**
 * All frames for other programs: JSON Feed 1.1, whose items each carry an extension `_bevelbook` with measurements and
 * offers. Prices are decimal texts in the currency that is named, for the day that is named.
 */
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { ListedFrame } from '../catalogue/frame.ts';
import { toDecimal } from '../money/decimal.ts';
import { AVAILABILITY, variantsOf } from './variants.ts';

interface FeedAddress {
  /** Of the feed, and of its home page. */
  readonly self: string;
  readonly home: string;
  readonly frame: (frame: ListedFrame) => string;
  readonly image: (frame: ListedFrame) => string;
}

function item(catalogue: Catalogue, frame: ListedFrame, date: string, address: FeedAddress) {
  const { shop, collections } = catalogue;
  const collection = collections.find(({ id }) => id === frame.collection);
  const price = (minor: number) => toDecimal(minor, shop.currencyDigits);
  return {
    id: frame.id,
    url: address.frame(frame),
    title: frame.model,
    content_text: frame.summary,
    image: address.image(frame),
    ...(frame.added === null ? {} : { date_published: `${frame.added}T00:00:00Z` }),
    ...(frame.changed === null ? {} : { date_modified: `${frame.changed}T00:00:00Z` }),
    tags: [collection?.name ?? frame.collection, frame.mounting.kind],
    _bevelbook: {
      material: frame.material,
      mounting: frame.mounting.kind,
      wearer: frame.wearer,
      massG: frame.massG,
      sizes: frame.sizes.map(({ id, aMm, bMm, dblMm, edMm, templeMm }) => {
        return { id, aMm, bMm, dblMm, edMm, templeMm };
      }),
      offers: variantsOf(catalogue, frame, date).map((variant) => ({
        sku: variant.sku,
        size: variant.size.id,
        colourway: variant.colourway.code,
        colour: variant.colourway.name,
        price: price(variant.dueMinor),
        ...(variant.dueMinor === variant.listMinor ? {} : { listPrice: price(variant.listMinor) }),
        ...(variant.until === null ? {} : { priceValidUntil: variant.until }),
        currency: shop.currency,
        availability: AVAILABILITY[variant.colourway.stock],
      })),
    },
  };
}

/** The text of the feed for a civil date. */
export function productFeed(
  catalogue: Catalogue,
  date: string,
  description: string,
  address: FeedAddress,
): string {
  const { shop, frames } = catalogue;
  return JSON.stringify({
    version: 'https://jsonfeed.org/version/1.1',
    title: shop.name,
    description,
    home_page_url: address.home,
    feed_url: address.self,
    language: shop.language,
    _bevelbook: { pricesFor: date },
    items: frames.map((frame) => item(catalogue, frame, date, address)),
  });
}

/**
 * What search engines are told of the shop, its frames and its pages, in the words of schema.org. `address` makes the
 * whole address of a path of the site.
 */
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { ListedFrame } from '../catalogue/frame.ts';
import type { Shop } from '../catalogue/shop.ts';
import { toDecimal } from '../money/decimal.ts';
import { AVAILABILITY, type Variant, variantsOf } from './variants.ts';

/** A node of JSON-LD. */
export interface Thing {
  readonly '@type': string;
  readonly [property: string]: unknown;
}

type Address = (path: string) => string;

const schemaOrg = (name: string) => `https://schema.org/${name}`;

/** The seller: an optician's shop. */
export function shopThing(shop: Shop, image: string, address: Address): Thing {
  const [, ...lines] = shop.contact.lines;
  return {
    '@type': 'Optician',
    '@id': `${address('/')}#shop`,
    name: shop.name,
    description: shop.tagline,
    url: address('/'),
    image,
    // The first line is the name again.
    address: (lines.length > 0 ? lines : shop.contact.lines).join(', '),
    email: shop.contact.email,
    telephone: shop.contact.phone,
    currenciesAccepted: shop.currency,
  };
}

/** Where a page stands: from home down to the page itself. */
export function trailThing(
  trail: readonly { readonly name: string; readonly path: string }[],
  address: Address,
): Thing {
  return {
    '@type': 'BreadcrumbList',
    itemListElement: trail.map(({ name, path }, index) => ({
      '@type': 'ListItem',
      position: index + 1,
      name,
      item: address(path),
    })),
  };
}

interface FramePage {
  readonly catalogue: Catalogue;
  readonly frame: ListedFrame;
  /** Civil date that prices are for. */
  readonly date: string;
  readonly path: string;
  /** Whole addresses of its pictures. */
  readonly images: readonly string[];
}

function variantThing(
  { catalogue: { shop }, frame, path }: FramePage,
  variant: Variant,
  address: Address,
): Thing {
  const { sku, size, colourway, dueMinor, until } = variant;
  return {
    '@type': 'Product',
    sku,
    name: `${frame.model} ${size.id}, ${colourway.name}`,
    size: size.id,
    color: colourway.name,
    offers: {
      '@type': 'Offer',
      price: toDecimal(dueMinor, shop.currencyDigits),
      priceCurrency: shop.currency,
      ...(until === null ? {} : { priceValidUntil: until }),
      availability: schemaOrg(AVAILABILITY[colourway.stock]),
      itemCondition: schemaOrg('NewCondition'),
      url: address(path),
    },
  };
}

/** A frame with all that can be bought of it, at the prices of the day. */
export function frameThing(page: FramePage, address: Address): Thing {
  const { catalogue, frame, date, path, images } = page;
  return {
    '@type': 'ProductGroup',
    '@id': `${address(path)}#frame`,
    productGroupID: frame.id,
    name: frame.model,
    description: frame.summary,
    url: address(path),
    image: images,
    brand: { '@type': 'Brand', name: catalogue.shop.name },
    material: frame.material,
    weight: { '@type': 'QuantitativeValue', value: frame.massG, unitCode: 'GRM' },
    variesBy: [schemaOrg('size'), schemaOrg('color')],
    hasVariant: variantsOf(catalogue, frame, date).map((variant) => variantThing(page, variant, address)),
  };
}

/** The text of a script element of type application/ld+json: inside it only `<` can end the text. */
export function linkedData(things: readonly Thing[]): string {
  return JSON.stringify({ '@context': 'https://schema.org', '@graph': things }).replaceAll('<', '\\u003c');
}

/**
 * The properties and types are those of schema.org, written out here from its pages on each type; a property that is
 * not in the table is a fault.
 */
import { describe, expect, it } from 'vitest';
import type { Catalogue } from '../../src/catalogue/catalogue.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { frameThing, linkedData, shopThing, trailThing } from '../../src/publishing/structuredData.ts';

// schema.org, pages of each type, properties of its parents included as far as they are used
const PROPERTIES: Readonly<Record<string, string>> = {
  ProductGroup:
    'productGroupID hasVariant variesBy name description url image brand material weight offers sku color size',
  Product: 'sku name size color offers image brand material weight url description',
  Offer: 'price priceCurrency priceValidUntil availability itemCondition url',
  Brand: 'name',
  QuantitativeValue: 'value unitCode',
  BreadcrumbList: 'itemListElement',
  ListItem: 'position name item',
  Optician: 'name description url image address email telephone currenciesAccepted',
};

/** Members of the enumerations ItemAvailability and OfferItemCondition that the shop uses, and of variesBy. */
const ADDRESSES = /^https:\/\/schema\.org\/(?:InStock|MadeToOrder|SoldOut|NewCondition|size|color)$/;

function faultsOf(value: unknown, path = 'graph'): string[] {
  if (Array.isArray(value)) return value.flatMap((item, index) => faultsOf(item, `${path}.${index}`));
  if (typeof value === 'string' && value.startsWith('https://schema.org/') && !ADDRESSES.test(value))
    return [`${path}: ${value}`];
  if (typeof value !== 'object' || value === null) return value === undefined || value === '' ? [path] : [];
  const { '@type': type, '@id': _, ...rest } = value as Record<string, unknown>;
  const known = PROPERTIES[String(type)]?.split(' ');
  if (known === undefined) return [`${path}: type ${type}`];
  return Object.entries(rest).flatMap(([name, inner]) => [
    ...(known.includes(name) ? [] : [`${path}: ${type} has no ${name}`]),
    ...faultsOf(inner, `${path}.${name}`),
  ]);
}

const reading = loadCatalogue('content');
if (!reading.ok) throw new Error('The demo has faults.');
const catalogue: Catalogue = reading.catalogue;
const address = (path: string) => `https://shop.example${path}`;
const frame = (id: string) => {
  const found = catalogue.frames.find((one) => one.id === id);
  if (found === undefined) throw new Error(`The demo has no ${id}.`);
  return found;
};
const thingOf = (id: string, date: string) =>
  frameThing({ catalogue, frame: frame(id), date, path: `/frames/${id}/`, images: [] }, address);
const offersOf = (id: string, date: string) =>
  (thingOf(id, date)['hasVariant'] as { offers: Record<string, string> }[]).map(({ offers }) => offers);

describe('what search engines are told', () => {
  it('uses the types and properties of schema.org', () => {
    const frames = catalogue.frames.map(({ id }) => thingOf(id, '2026-11-25'));
    const trail = trailThing([{ name: 'Home', path: '/' }], address);
    expect(
      faultsOf([shopThing(catalogue.shop, address('/share/shop.png'), address), trail, ...frames]),
    ).toEqual([]);
  });

  it('offers each size in each colourway once', () => {
    for (const one of catalogue.frames) {
      const skus = (thingOf(one.id, '2026-11-25')['hasVariant'] as { sku: string }[]).map(({ sku }) => sku);
      expect(new Set(skus).size).toBe(skus.length);
      expect(skus.length).toBe(one.sizes.length * one.colourways.length - one.notOffered.length);
    }
  });

  it('gives the price of the day, and until when it holds', () => {
    // Harbor month: 15 % off a frame of 149.00 up to December 5, 2026; 149.00 less 22.35.
    expect(offersOf('sanderling', '2026-12-05')[0]).toMatchObject({
      price: '126.65',
      priceCurrency: 'USD',
      priceValidUntil: '2026-12-05',
    });
    const after = offersOf('sanderling', '2026-12-06')[0];
    expect(after).toMatchObject({ price: '149.00' });
    expect(after).not.toHaveProperty('priceValidUntil');
  });

  it('cannot end its script element', () => {
    const text = linkedData([{ '@type': 'Brand', name: '</script><b>' }]);
    expect(text).not.toContain('<');
    expect(JSON.parse(text)['@graph'][0].name).toBe('</script><b>');
  });
});

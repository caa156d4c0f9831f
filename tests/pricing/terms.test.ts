import { describe, expect, test } from 'vitest';
import type { Offer } from '../../src/catalogue/catalogue.ts';
import type { Asked } from '../../src/pricing/pair.ts';
import { termsOf } from '../../src/pricing/terms.ts';
import { asked, offer, promotion, shop } from './offer.ts';

const home = { ...offer, shop: { ...shop, shipping: shop.shipping.slice(0, 2), tax: shop.tax.slice(0, 1) } };

function faults(changed: Partial<Asked>, of: Offer = home) {
  const found = termsOf(of, { ...asked, ...changed });
  return found.ok ? [] : found.faults;
}

describe('an order has no price', () => {
  test('to a place without shipping or tax rate', () => {
    expect(faults({ destination: 'DE' })).toMatchInlineSnapshot(`
      [
        {
          "expected": "an ISO 3166 country or subdivision code; the shop names US, US-ME",
          "found": "DE",
          "message": "No shipping is offered to “DE”. Choose another destination or ask the shop.",
          "path": "destination",
        },
        {
          "expected": "a destination that a tax rate names: US-ME",
          "found": "DE",
          "message": "No tax rate is known for “DE”, so there is no price yet. Ask the shop.",
          "path": "destination",
        },
      ]
    `);
  });

  test('to a place that has shipping but no tax rate', () => {
    expect(faults({ destination: 'US-NH' })).toMatchInlineSnapshot(`
      [
        {
          "expected": "a destination that a tax rate names: US-ME",
          "found": "US-NH",
          "message": "No tax rate is known for “US-NH”, so there is no price yet. Ask the shop.",
          "path": "destination",
        },
      ]
    `);
  });

  test('to a place that is none, even where anywhere is served', () => {
    expect(faults({ destination: 'Atlantis' }, offer)).toMatchInlineSnapshot(`
      [
        {
          "expected": "an ISO 3166 country or subdivision code; the shop names US, US-ME, *",
          "found": "Atlantis",
          "message": "No shipping is offered to “Atlantis”. Choose another destination or ask the shop.",
          "path": "destination",
        },
      ]
    `);
  });

  test('with an exemption that the shop does not know', () => {
    expect(faults({ taxExemption: 'school' })).toMatchInlineSnapshot(`
      [
        {
          "expected": "null, or one of resale",
          "found": "school",
          "message": "The shop knows no tax exemption “school”.",
          "path": "taxExemption",
        },
      ]
    `);
  });

  test('with an exemption that does not hold there', () => {
    expect(faults({ taxExemption: 'resale', destination: 'US-NH' })).toMatchInlineSnapshot(`
      [
        {
          "expected": "null, or a destination in US-ME",
          "found": "resale",
          "message": "Resale does not hold in US-NH.",
          "path": "taxExemption",
        },
      ]
    `);
  });

  test('on a day that is none', () => {
    expect(faults({ date: '2026-02-29' })).toMatchInlineSnapshot(`
      [
        {
          "expected": "a date written YYYY-MM-DD, such as 2026-11-25",
          "found": "2026-02-29",
          "message": "“2026-02-29” is not a day of the calendar.",
          "path": "date",
        },
      ]
    `);
  });
});

describe('the terms of an order', () => {
  test.each([
    ['US-ME', 'Parcel in Maine', ['Maine sales tax']],
    ['US-NH', 'Parcel in the United States', ['No tax']],
    ['JP', 'Parcel abroad', ['No tax']],
  ])('to %s are those of the longest name', (destination, shipping, taxes) => {
    const found = termsOf(offer, { ...asked, destination });
    if (!found.ok) throw new Error('refused');
    expect(found.terms.shipping.label).toBe(shipping);
    expect(found.terms.taxes.map(({ label }) => label)).toEqual(taxes);
  });

  test('in a shop that adds no tax at all need no rate', () => {
    expect(faults({ destination: 'US-NH' }, { ...home, shop: { ...home.shop, tax: [] } })).toEqual([]);
  });

  test('hold the promotions without a code and those whose code was typed, in declared order', () => {
    const gift = { kind: 'shipping' } as const;
    const promotions = [
      promotion('c', gift, { code: 'ONE' }),
      promotion('b', gift, { code: 'TWO' }),
      promotion('a', gift),
    ];
    const found = termsOf({ ...offer, promotions }, { ...asked, codes: ['one'] });
    if (!found.ok) throw new Error('refused');
    expect(found.terms.candidates.map((candidate) => candidate.promotion.id)).toEqual(['c', 'a']);
  });
});

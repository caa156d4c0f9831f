import { describe, expect, it } from 'vitest';
import { printedAfter } from '../faultyShop.ts';

const shop = (passage: string, by: string) => printedAfter('shop.yaml', passage, by);

describe('shop.yaml', () => {
  it('names a currency that the world has', () => {
    expect(shop('currency: USD', 'currency: USX')).toMatchInlineSnapshot(`
      "
      content/shop.yaml:5:11 currency: this currency is not known [unknown-currency]
        5 | currency: USX
          |           ^^^
        expected: a currency of ISO 4217, such as USD, EUR or JPY
        found:    "USX"
        to do:    Write the three letters of the currency.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('names a time zone that the runtime knows', () => {
    expect(shop('America/New_York', 'America/NewYork')).toMatchInlineSnapshot(`
      "
      content/shop.yaml:6:11 timeZone: this time zone is not known [unknown-time-zone]
        6 | timeZone: America/NewYork
          |           ^^^^^^^^^^^^^^^
        expected: an IANA time zone, such as America/New_York
        found:    "America/NewYork"
        to do:    Did you mean America/New_York?

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
    expect(shop('America/New_York', '"+02:00"')).toContain('[unknown-time-zone]');
    expect(shop('America/New_York', 'Europe/Kyiv')).toBe('no fault');
  });

  it('names a destination to which it sends', () => {
    expect(shop('destinations: [US]', 'destinations: [CA]')).toMatchInlineSnapshot(`
      "
      content/shop.yaml:7:14 destination: the shop does not send there [not-served]
        7 | destination: US-ME
          |              ^^^^^
        expected: a destination that a shipping rate covers: CA
        found:    "US-ME"
        to do:    Add US-ME to a rate below shipping, or choose another destination.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('names countries that there are', () => {
    expect(shop('destinations: [US]', 'destinations: [US, ZX]')).toMatchInlineSnapshot(`
      "
      content/shop.yaml:28:26 shipping.0.destinations.1: this value is not possible [wrong-value]
        28 |   - { destinations: [US, ZX], label: Parcel, amount: "8.50" }
           |                          ^^
        expected: a country of ISO 3166, such as US, or a part of it, such as US-ME
        found:    "ZX"
        to do:    Write the two letters of the country first.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('has an address without a slash at its end', () => {
    expect(shop('https://quay.example', 'https://quay.example/')).toMatchInlineSnapshot(`
      "
      content/shop.yaml:3:10 address: this value is not possible [wrong-value]
        3 | address: https://quay.example/
          |          ^^^^^^^^^^^^^^^^^^^^^
        expected: an address such as https://shop.example, without a slash at its end
        found:    the text "https://quay.example/"
        to do:    Write an address such as https://shop.example, without a slash at its end.

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
  });

  it('quotes the star for anywhere else', () => {
    expect(shop('destinations: [US]', 'destinations: [*]')).toMatchInlineSnapshot(`
      "
      content/shop.yaml:28:22 this is not well-formed YAML [yaml-syntax]
        28 |   - { destinations: [*], label: Parcel, amount: "8.50" }
           |                      ^
        expected: fields as "name: value", each in its own line, lists with "- "
        found:    a star or an ampersand without a name
        to do:    Put it in quotes: "*".

      1 fault in 1 file of the shop's content. Nothing is built until all are mended.
      "
    `);
    expect(shop('destinations: [US]', 'destinations: ["*"]')).toBe('no fault');
  });
});

import { expect, it } from 'vitest';
import { countryNames, namedDestinations } from '../../src/configurator/destinations.ts';
import { otherDestinations } from '../../src/configurator/otherDestinations.ts';
import { shop } from './shop.ts';

const nameOf = countryNames('en');

it('names the places of the shop, the default first', () => {
  expect(namedDestinations(shop.shop, nameOf).slice(0, 3)).toEqual([
    { code: 'US-ME', name: 'Maine, United States' },
    { code: 'US', name: 'United States' },
    { code: 'CA', name: 'Canada' },
  ]);
});

it('offers every other country once, where the shop sends anywhere', () => {
  const others = otherDestinations(shop.shop, nameOf, 'en');
  const names = others.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  expect(others).toContainEqual({ code: 'DE', name: 'Germany' });
  expect(others.map(({ code }) => code)).not.toContain('US');
});

it('offers no other country where the shop sends to named places alone', () => {
  const shipping = shop.shop.shipping.filter(({ destinations }) => !destinations.includes('*'));
  expect(otherDestinations({ ...shop.shop, shipping }, nameOf, 'en')).toEqual([]);
});

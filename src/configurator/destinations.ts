/** Where the shop sends to, as a list to choose from. */
import type { Shop } from '../catalogue/shop.ts';

export interface Destination {
  readonly code: string;
  readonly name: string;
}

/** Names of places in a language; undefined where there is none. */
export type NameOf = (region: string) => string | undefined;

/** Codes in use for unions and for nowhere, which nothing is sent to. */
const NO_COUNTRY = ['EU', 'EZ', 'UN', 'QO', 'XA', 'XB', 'ZZ'];

/** What of a shop says where it sends to. */
type Sends = Pick<Shop, 'shipping' | 'destination'>;

/** Destinations that the shop names, the nearest first: `United States, ME` before `United States`. */
export function namedDestinations({ shipping, destination }: Sends, nameOf: NameOf): readonly Destination[] {
  const codes = shipping.flatMap(({ destinations }) => destinations).filter((code) => code !== '*');
  return [...new Set([destination, ...codes])].map((code) => ({ code, name: nameOfPlace(code, nameOf) }));
}

/** All other countries by name, where the shop sends anywhere; none where it does not. */
export function otherDestinations(shop: Sends, nameOf: NameOf, language: string): readonly Destination[] {
  if (!shop.shipping.some(({ destinations }) => destinations.includes('*'))) return [];
  const named = new Set(namedDestinations(shop, nameOf).map(({ code }) => code));
  const letters = Array.from('ABCDEFGHIJKLMNOPQRSTUVWXYZ');
  return letters
    .flatMap((one) => letters.map((other) => one + other))
    .filter((code) => !named.has(code) && !NO_COUNTRY.includes(code) && isCurrent(code))
    .flatMap((code) => {
      const name = nameOf(code);
      return name === undefined || name === code ? [] : [{ code, name }];
    })
    .sort((one, other) => one.name.localeCompare(other.name, language));
}

/** Whether the code is the one in use for its country, and not a former one. */
const isCurrent = (code: string) => Intl.getCanonicalLocales(`und-${code}`)[0] === `und-${code}`;

function nameOfPlace(code: string, nameOf: NameOf): string {
  const [country = code, part] = code.split('-');
  const name = nameOf(country) ?? country;
  return part === undefined ? name : `${name}, ${part}`;
}

/** Country names of a language; never throws. */
export function countryNames(language: string): NameOf {
  const names = new Intl.DisplayNames(language, { type: 'region', fallback: 'none' });
  return (region) => names.of(region);
}

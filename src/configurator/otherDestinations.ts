/** Every country that a shop does not name, as a list to choose from: loaded once a form wants it. */
import { type Destination, type NameOf, namedDestinations, type Sends } from './destinations.ts';

/** Codes in use for unions and for nowhere, which nothing is sent to. */
const NO_COUNTRY = ['EU', 'EZ', 'UN', 'QO', 'XA', 'XB', 'ZZ'];

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

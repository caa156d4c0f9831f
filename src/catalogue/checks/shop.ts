/** What Intl knows of the shop's language, currency, zone and places, and whether the shop can send at all. */
import { currencyDigits } from '../../money/currency.ts';
import { type AuthoredShop, type Check, faultsOf } from '../content.ts';
import type { FaultDetail, FieldPath } from '../fault.ts';
import { listNames, nearest } from '../nearest.ts';
import { faultAt } from '../reading/entry.ts';
import { valueAt } from '../schema/parse.ts';
import { type Add, adding } from './adding.ts';

/** Looked at even where the rest of the file is wrong, since every price is read by it. */
function currencyFault(code: unknown): FaultDetail | null {
  if (typeof code !== 'string' || !/^[A-Z]{3}$/.test(code) || currencyDigits(code) !== null) return null;
  const meant = nearest(code, Intl.supportedValuesOf('currency'));
  return {
    code: 'unknown-currency',
    expected: 'a currency of ISO 4217, such as USD, EUR or JPY',
    received: `"${code}"`,
    hint: meant === null ? 'Write the three letters of the currency.' : `Did you mean ${meant}?`,
  };
}

function zoneFault(zone: string): FaultDetail | null {
  // The short names that Intl knows besides, such as EST, stand still when clocks are changed.
  const isName = /^[A-Za-z]+(?:[/_+-]?\w+)*\/[\w+/-]+$|^UTC$/.test(zone);
  try {
    if (isName) new Intl.DateTimeFormat('en', { timeZone: zone });
    if (isName) return null;
  } catch {
    // Intl throws for a zone that it does not know.
  }
  const meant = nearest(zone, Intl.supportedValuesOf('timeZone'));
  return {
    code: 'unknown-time-zone',
    expected: 'an IANA time zone, such as America/New_York',
    received: `"${zone}"`,
    hint:
      meant === null
        ? 'Write continent and city; short names do not follow the change of the clocks.'
        : `Did you mean ${meant}?`,
  };
}

function placeFault(place: string): FaultDetail | null {
  const country = place.slice(0, 2);
  if (place === '*' || new Intl.DisplayNames('en', { type: 'region', fallback: 'none' }).of(country))
    return null;
  return {
    code: 'wrong-value',
    expected: 'a country of ISO 3166, such as US, or a part of it, such as US-ME',
    received: `"${place}"`,
    hint: 'Write the two letters of the country first.',
  };
}

/** The names under which a destination is looked up, the longest first. */
function lookups(destination: string): string[] {
  return [...new Set([destination, destination.slice(0, 2), '*'])];
}

function servedFault({ destination, shipping }: AuthoredShop): FaultDetail | null {
  const served = shipping.flatMap(({ destinations }) => destinations);
  if (lookups(destination).some((name) => served.includes(name))) return null;
  return {
    code: 'not-served',
    expected: `a destination that a shipping rate covers: ${listNames(served)}`,
    received: `"${destination}"`,
    hint: `Add ${destination} to a rate below shipping, or choose another destination.`,
  };
}

/** An address and the word for it stand together. */
function postFault({ order: { delivery, postTo } }: AuthoredShop): FaultDetail | null {
  const posts = delivery.includes('post');
  if (posts === (postTo !== null)) return null;
  return {
    code: 'parts-disagree',
    expected: 'post among the ways of delivery, and the address in postTo, or neither',
    received: posts ? 'post without an address' : `the address ${postTo} without post`,
    hint: posts ? 'Add postTo: https://... or take post out.' : 'Add post to delivery, or remove postTo.',
  };
}

function checkPlaces(shop: AuthoredShop, list: 'shipping' | 'tax' | 'exemptions', add: Add): void {
  for (const [index, { destinations }] of shop[list].entries())
    for (const [at, place] of destinations.entries())
      addIf(add, [list, index, 'destinations', at], placeFault(place));
}

const CHECKS: readonly ((shop: AuthoredShop, add: Add) => void)[] = [
  ({ timeZone }, add) => addIf(add, ['timeZone'], zoneFault(timeZone)),
  (shop, add) => addIf(add, ['destination'], placeFault(shop.destination) ?? servedFault(shop)),
  (shop, add) => addIf(add, ['order', shop.order.postTo === null ? 'delivery' : 'postTo'], postFault(shop)),
  (shop, add) => checkPlaces(shop, 'shipping', add),
  (shop, add) => checkPlaces(shop, 'tax', add),
  (shop, add) => checkPlaces(shop, 'exemptions', add),
];

const addIf = (add: Add, path: FieldPath, detail: FaultDetail | null): void => {
  if (detail !== null) add(path, detail);
};

/** Faults of shop.yaml that its schema cannot see. */
export const checkShop: Check = ({ shop }) => {
  if (shop === null) return [];
  const currency = currencyFault(valueAt(shop.origin.raw, ['currency']));
  return [
    ...(currency === null ? [] : [faultAt(shop.origin, ['currency'], currency)]),
    ...faultsOf([shop], ...CHECKS.map(adding)),
  ];
};

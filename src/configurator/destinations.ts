/** Where the shop sends to, as a list to choose from. */
import type { Shop } from '../catalogue/shop.ts';

export interface Destination {
  readonly code: string;
  readonly name: string;
}

/** Names of places in a language; undefined where there is none. */
export type NameOf = (region: string) => string | undefined;

/** What of a shop says where it sends to. */
export type Sends = Pick<Shop, 'shipping' | 'destination'>;

/** Destinations that the shop names, the nearest first: `United States, ME` before `United States`. */
export function namedDestinations({ shipping, destination }: Sends, nameOf: NameOf): readonly Destination[] {
  const codes = shipping.flatMap(({ destinations }) => destinations).filter((code) => code !== '*');
  return [...new Set([destination, ...codes])].map((code) => ({ code, name: nameOfPlace(code, nameOf) }));
}

function nameOfPlace(code: string, nameOf: NameOf): string {
  const [country = code, part] = code.split('-');
  const name = nameOf(country) ?? country;
  return part === undefined ? name : `${name}, ${part}`;
}

const kept = new Map<string, Intl.DisplayNames>();

/** Country names of a language; never throws. */
export function countryNames(language: string): NameOf {
  const names = kept.get(language) ?? new Intl.DisplayNames(language, { type: 'region', fallback: 'none' });
  kept.set(language, names);
  return (region) => names.of(region);
}

/** Where the shop sends to, as a list to choose from. */
import type { Shop } from '../catalogue/shop.ts';

export interface Destination {
  readonly code: string;
  readonly name: string;
}

/** Names of places in a language; undefined where there is none. */
export type NameOf = (region: string) => string | undefined;

/** What of a shop says where it sends to. */
export type Sends = Pick<Shop, 'shipping' | 'destination' | 'places'>;

/** Destinations that the shop names, the nearest first: `Maine, United States` before `United States`. */
export function namedDestinations(sends: Sends, nameOf: NameOf): readonly Destination[] {
  const codes = sends.shipping.flatMap(({ destinations }) => destinations).filter((code) => code !== '*');
  return [...new Set([sends.destination, ...codes])].map((code) => ({
    code,
    name: placeName(code, sends, nameOf),
  }));
}

/** What a place is called: a country by its name, a part of one by the shop's name for it, else by its code. */
export function placeName(code: string, { places }: Pick<Shop, 'places'>, nameOf: NameOf): string {
  const [country = code, part] = code.split('-');
  const name = nameOf(country) ?? country;
  if (part === undefined) return name;
  return `${places.find((one) => one.code === code)?.name ?? part}, ${name}`;
}

const kept = new Map<string, Intl.DisplayNames>();

/** Country names of a language; never throws. */
export function countryNames(language: string): NameOf {
  const names = kept.get(language) ?? new Intl.DisplayNames(language, { type: 'region', fallback: 'none' });
  kept.set(language, names);
  return (region) => names.of(region);
}

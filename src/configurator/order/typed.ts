/**
 * What is typed and ticked on the order page: texts by the name of their field, as they stand. Of the order as a whole:
 * `name`, `address`, `email`, `phone`, `notes`, `payment`.
 */

export type Typed = Readonly<Record<string, string>>;

/** Fields of one pair. */
export type PairField =
  | 'wearer'
  | 'prescriber'
  | 'place'
  | 'written'
  | 'measuredBy'
  | 'measuredNote'
  | 'baseCurve';

/** Name of a field of the pair that has this number in the basket; `issued` is held there. */
export const ofPair = (id: number, field: PairField | 'issued' | 'cautions' | 'files'): string =>
  `pair.${id}.${field}`;

/** Name of the tick behind a caution of a pair; it holds the words that were confirmed. */
export const cautionField = (id: number, rule: string): string => `pair.${id}.caution.${rule}`;

/** Name of the tick behind a consent; it holds the words that were accepted. */
export const consentField = (id: string): string => `consent.${id}`;

/** What stands in a field; empty where nothing does. */
export const textIn = (typed: Typed, field: string): string =>
  Object.hasOwn(typed, field) ? (typed[field] ?? '') : '';

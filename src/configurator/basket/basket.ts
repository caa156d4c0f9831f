/** The basket: several pairs and the terms of the order. Nothing of it is judged here. */

import type { Entries, Field } from '../fields.ts';
import { BASKET_KEY } from '../keeping/heldKeys.ts';
import { readHeldPair } from '../keeping/heldPair.ts';
import type { Holding } from '../keeping/holding.ts';
import { type HeldPair, isTerms, packagePart, termsPart } from '../keeping/parts.ts';
import { isRecord, only } from '../keeping.ts';

/** As many as one request may hold. */
export const MOST_PAIRS = 20;

export interface BasketPair extends HeldPair {
  /** Its number in this basket, never given twice. */
  readonly id: number;
}

export interface Basket {
  readonly pairs: readonly BasketPair[];
  /** Destination, exemption and codes. */
  readonly terms: Entries;
  /** The greatest number that a pair was given; absent: that of the pairs that are there. */
  readonly given?: number;
}

export const NO_BASKET: Basket = { pairs: [], terms: {} };

export const BASKET: Holding<Basket> = {
  key: BASKET_KEY,
  read: (json) => {
    if (!isRecord(json) || !Array.isArray(json['pairs'])) return null;
    const pairs = json['pairs'].map(readPair);
    const ids = new Set(pairs.map((pair) => pair?.id));
    if (pairs.length > MOST_PAIRS || ids.size < pairs.length) return null;
    if (!pairs.every((pair) => pair !== null)) return null;
    const given = json['given'];
    const terms = only(json['terms'], isTerms);
    return isNumber(given) ? { pairs, terms, given } : { pairs, terms };
  },
};

function readPair(json: unknown): BasketPair | null {
  const held = readHeldPair(json);
  const id = isRecord(json) ? json['id'] : null;
  return held !== null && isNumber(id) ? { id, ...held } : null;
}

const isNumber = (value: unknown): value is number =>
  typeof value === 'number' && Number.isSafeInteger(value) && value > 0;

/** The basket with one more pair at its end; null where it is full. Terms given with it count, others stay. */
export function put(basket: Basket, pair: HeldPair, terms: Entries = {}): Basket | null {
  if (basket.pairs.length >= MOST_PAIRS) return null;
  const id = Math.max(basket.given ?? 0, ...basket.pairs.map((one) => one.id)) + 1;
  return {
    given: id,
    pairs: [...basket.pairs, { id, ...pair }],
    terms: { ...basket.terms, ...termsPart(terms) },
  };
}

/** The basket with another pair in the place of one; as it was where that one is gone. */
export function replace(basket: Basket, id: number, pair: HeldPair, terms: Entries = {}): Basket {
  if (!basket.pairs.some((one) => one.id === id)) return basket;
  return {
    ...basket,
    pairs: basket.pairs.map((one) => (one.id === id ? { id, ...pair } : one)),
    terms: { ...basket.terms, ...termsPart(terms) },
  };
}

/** The basket without one pair. */
export const remove = (basket: Basket, id: number): Basket => ({
  ...basket,
  pairs: basket.pairs.filter((one) => one.id !== id),
});

/** The basket with one entry of a pair changed. */
export const enter = (basket: Basket, id: number, field: Field, text: string): Basket => ({
  ...basket,
  pairs: basket.pairs.map((one) =>
    one.id === id ? { ...one, entries: { ...one.entries, [field]: text } } : one,
  ),
});

/** One more pair of the same package for somebody else: without prescription, measurements and wearer. */
export function copyForAnother(basket: Basket, id: number): Basket | null {
  const pair = basket.pairs.find((one) => one.id === id);
  return pair === undefined ? null : put(basket, { frame: pair.frame, entries: packagePart(pair.entries) });
}

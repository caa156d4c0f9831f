/** Packages set aside to be compared: up to three, each once. */

import { ASIDE_KEY } from './heldKeys.ts';
import { readHeldPair } from './heldPair.ts';
import type { Holding } from './holding.ts';
import type { HeldPair } from './parts.ts';

export const MOST_ASIDE = 3;

export const ASIDE: Holding<readonly HeldPair[]> = {
  key: ASIDE_KEY,
  read: (json) => {
    if (!Array.isArray(json)) return null;
    const pairs = json.map(readHeldPair);
    return pairs.every((pair) => pair !== null) && pairs.length <= MOST_ASIDE ? pairs : null;
  },
};

/** Whether two pairs are the same package for the same eyes. */
export function samePair(one: HeldPair, other: HeldPair): boolean {
  const text = ({ frame, entries }: HeldPair) => JSON.stringify([frame, Object.entries(entries).sort()]);
  return text(one) === text(other);
}

export type SettingAside =
  | { readonly ok: true; readonly pairs: readonly HeldPair[] }
  | { readonly ok: false; readonly why: 'full' | 'there' };

/** The packages with one more; refused where it is among them, or there is no room. */
export function setAside(pairs: readonly HeldPair[], pair: HeldPair): SettingAside {
  if (pairs.some((one) => samePair(one, pair))) return { ok: false, why: 'there' };
  if (pairs.length >= MOST_ASIDE) return { ok: false, why: 'full' };
  return { ok: true, pairs: [...pairs, pair] };
}

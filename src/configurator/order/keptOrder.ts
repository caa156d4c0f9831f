/** What is kept of an order in its tab, where the shopper ticked that: the texts and what went out, never a file. */

import { ORDER_KEY } from '../keeping/heldKeys.ts';
import type { Holding } from '../keeping/holding.ts';
import { isRecord } from '../keeping.ts';
import type { Typed } from './typed.ts';

/** What left the page, and how. */
export interface Gone {
  readonly how: 'saved' | 'mailed' | 'shared' | 'posted';
  /** Name of the file. */
  readonly file: string;
  /** SHA-256 of the order before it was sealed. */
  readonly digest: string;
  /** The form as it was then: snapshotOf. */
  readonly of: string;
}

export interface KeptOrder {
  readonly number: string;
  readonly typed: Typed;
  readonly gone: Gone | null;
}

/** More is not ours: a field holds 5,000 letters at most. */
const MOST_FIELDS = 1000;
const LONGEST = 20_000;
const HOWS = ['saved', 'mailed', 'shared', 'posted'] as const;

export const ORDER: Holding<KeptOrder> = {
  key: ORDER_KEY,
  read: (json) => {
    if (!isRecord(json) || !isRecord(json['typed'])) return null;
    const { number } = json;
    const texts = Object.entries(json['typed']);
    if (typeof number !== 'string' || !/^\d{12}$/.test(number) || texts.length > MOST_FIELDS) return null;
    if (!texts.every(([, text]) => typeof text === 'string' && text.length <= LONGEST)) return null;
    return { number, typed: Object.fromEntries(texts) as Typed, gone: readGone(json['gone']) };
  },
};

function readGone(json: unknown): Gone | null {
  if (!isRecord(json)) return null;
  const how = HOWS.find((one) => one === json['how']);
  const { file, digest, of } = json;
  const isWhole = typeof file === 'string' && typeof digest === 'string' && typeof of === 'string';
  return how !== undefined && isWhole && /^[0-9a-f]{64}$/.test(digest) ? { how, file, digest, of } : null;
}

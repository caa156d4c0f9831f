/** Pairs as text in a store, read back with care: anybody could have written there. */
import { isRecord, only } from '../keeping.ts';
import { type HeldPair, isTerms } from './parts.ts';

/** The longest name of a frame that is looked for. */
const LONGEST_ID = 100;

/** A pair of the parsed text; null where it is none. */
export function readHeldPair(json: unknown): HeldPair | null {
  if (!isRecord(json)) return null;
  const frame = json['frame'];
  // It becomes part of an address: the ids of frames are such words.
  if (typeof frame !== 'string' || frame.length > LONGEST_ID || !/^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(frame))
    return null;
  return { frame, entries: only(json['entries'], (field) => !isTerms(field)) };
}

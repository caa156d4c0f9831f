/** A look at JSON from outside before anything reads it: no key that reaches into the language, no depth, no odd text. */
import { briefly, type Refusal, refusal } from './refusal.ts';
import { isPlainText } from './text.ts';

const FORBIDDEN = new Set(['__proto__', 'constructor', 'prototype']);
/** An order goes nine levels deep. */
const MOST_LEVELS = 16;
/** A traced outline is the longest list: 1440 radii. */
const MOST_ITEMS = 2000;
const LONGEST_TEXT = 5000;
const LONGEST_KEY = 80;

/** Brackets, braces and commas of a file; the largest order that a shop takes has a third of these. */
const MOST_MARKS = 100_000;
const MARKS = new Set(Array.from('[{,', (mark) => mark.charCodeAt(0)));

/**
 * Whether bytes have more marks of JSON than any order: a parser would spend seconds and a gigabyte on 20 MB of
 * brackets.
 */
export function isCrowded(bytes: Uint8Array): boolean {
  let marks = 0;
  for (const byte of bytes) if (MARKS.has(byte)) marks += 1;
  return marks > MOST_MARKS;
}

/** The first thing that no order holds; null where there is none. Attachments alone are long. */
export function inspectJson(value: unknown, path = '', level = 0): Refusal | null {
  if (level > MOST_LEVELS) return refusal('too-deep', { path: briefPath(path), most: MOST_LEVELS });
  if (typeof value === 'string') return inspectText(value, path);
  if (typeof value !== 'object' || value === null) return null;
  const keys = Array.isArray(value) ? value.length : Object.keys(value).length;
  if (keys > MOST_ITEMS) return refusal('too-many', { path: briefPath(path), most: MOST_ITEMS, found: keys });
  for (const [key, inner] of Object.entries(value)) {
    if (FORBIDDEN.has(key) || key.length > LONGEST_KEY || !isPlainText(key))
      return refusal('forbidden-key', { path: briefPath(path), key: briefly(key) });
    const found = inspectJson(inner, path === '' ? key : `${path}.${key}`, level + 1);
    if (found !== null) return found;
  }
  return null;
}

function inspectText(text: string, path: string): Refusal | null {
  // Held to its own limit by the schema.
  if (path.endsWith('.base64')) return null;
  if (text.length > LONGEST_TEXT)
    return refusal('long-text', { path: briefPath(path), most: LONGEST_TEXT, found: text.length });
  return isPlainText(text) ? null : refusal('odd-text', { path: briefPath(path) });
}

const briefPath = (path: string): string => (path === '' ? '(whole file)' : path.slice(0, 200));

/** A look at JSON from outside before anything reads it: no key that reaches into the language, no depth, no odd text. */
import { briefly, type Refusal, refusal } from './refusal.ts';
import { isPlainText } from './text.ts';

const FORBIDDEN = new Set(['__proto__', 'constructor', 'prototype']);
/** An order goes eight levels deep. */
const MOST_LEVELS = 16;
const LONGEST_TEXT = 5000;
const LONGEST_KEY = 80;

/** The first thing that no order holds; null where there is none. Attachments alone are long. */
export function inspectJson(value: unknown, path = '', level = 0): Refusal | null {
  if (level > MOST_LEVELS) return refusal('too-deep', { path: briefPath(path), most: MOST_LEVELS });
  if (typeof value === 'string') return inspectText(value, path);
  if (typeof value !== 'object' || value === null) return null;
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

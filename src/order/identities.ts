/** Private keys as a key file holds them: one a line, with lines of remarks that begin with #. */

import { isPrivateKey } from '../catalogue/keyText.ts';

export type Identities =
  | { readonly ok: true; readonly identities: readonly string[] }
  | { readonly ok: false; readonly code: 'locked' | 'none' | 'line' | 'mistyped'; readonly line: number };

/**
 * The private keys of a key file. Refused: a file that is itself locked with a passphrase, one that holds no key, and
 * a line that is no key, or one that begins like a key and is `mistyped`; the line is told by its number, never by its
 * text, since it may be most of a key.
 */
export function readIdentities(text: string): Identities {
  if (/^(?:age-encryption\.org|-----BEGIN AGE)/.test(text)) return { ok: false, code: 'locked', line: 1 };
  const lines = text
    .replace(/^\uFEFF/, '')
    .split(/\r?\n/)
    .map((line) => line.trim());
  const wrong = lines.findIndex((line) => line !== '' && !line.startsWith('#') && !isPrivateKey(line));
  if (wrong >= 0) {
    const code = /^age-?s/i.test(lines[wrong] ?? '') ? 'mistyped' : 'line';
    return { ok: false, code, line: wrong + 1 };
  }
  const identities = lines.filter(isPrivateKey);
  return identities.length > 0 ? { ok: true, identities } : { ok: false, code: 'none', line: 1 };
}

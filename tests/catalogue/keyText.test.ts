import { generateX25519Identity, identityToRecipient } from 'age-encryption';
import { describe, expect, it } from 'vitest';
import { isPrivateKey, isPublicKey } from '../../src/catalogue/keyText.ts';

describe('a key', () => {
  it('is, in both halves, what the age library makes', async () => {
    for (let made = 0; made < 20; made += 1) {
      const identity = await generateX25519Identity();
      expect(isPrivateKey(identity)).toBe(true);
      expect(isPublicKey(await identityToRecipient(identity))).toBe(true);
    }
  });

  it('loses its checksum with any one letter changed, and with two neighbours swapped', async () => {
    const key = await identityToRecipient(await generateX25519Identity());
    for (let at = 4; at < key.length; at += 1) {
      for (const letter of 'qpzry9x8gf2tvdw0s3jn54khce6mua7l') {
        const changed = key.slice(0, at) + letter + key.slice(at + 1);
        expect(isPublicKey(changed)).toBe(changed === key);
      }
      const swapped = key.slice(0, at) + (key[at + 1] ?? '') + (key[at] ?? '') + key.slice(at + 2);
      expect(isPublicKey(swapped)).toBe(swapped === key);
    }
  });

  it('as the public half is neither a private key nor a key of another kind', () => {
    for (const text of [
      '',
      'age1',
      'AGE-SECRET-KEY-1',
      'age1pq1qqqq',
      `age1${'q'.repeat(58)}`,
      `age1${'b'.repeat(58)}`,
    ])
      expect(isPublicKey(text)).toBe(false);
  });

  it('as the private half is neither a public key nor written small', async () => {
    const identity = await generateX25519Identity();
    expect(isPrivateKey(identity.toLowerCase())).toBe(false);
    expect(isPrivateKey(await identityToRecipient(identity))).toBe(false);
  });
});

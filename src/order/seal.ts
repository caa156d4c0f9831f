/**
 * Sealing to the shop's public keys and opening with private ones, in the age format. The library is loaded only when
 * something is sealed or opened; it draws its own random keys. A seal keeps a file secret and whole: it does not prove
 * who wrote it.
 */

/** Why sealed bytes could not be opened. */
export const SEAL_FAULTS = ['no-key', 'wrong-key', 'tampered'] as const;
export type SealFault = (typeof SEAL_FAULTS)[number];

const START = 'age-encryption.org/v1\n';
const ARMOUR = '-----BEGIN AGE ENCRYPTED FILE-----';
/** Twenty recipients take 3 kB. A longer header is made to keep us busy: every recipient in it costs a key agreement. */
const MOST_HEADER_BYTES = 8192;

const letters = (bytes: Uint8Array, from: number, to: number): string =>
  Array.from(bytes.subarray(from, to), (byte) => String.fromCharCode(byte)).join('');

/** Whether the bytes are sealed with age, as they stand or as letters for mail. */
export const isSealed = (bytes: Uint8Array): boolean =>
  letters(bytes, 0, START.length) === START || isArmoured(bytes);

const isArmoured = (bytes: Uint8Array): boolean =>
  letters(bytes, 0, ARMOUR.length + 16)
    .trimStart()
    .startsWith(ARMOUR);

/** Bytes sealed to every one of the recipients. Throws where a recipient is none, or there is none. */
export async function seal(bytes: Uint8Array, recipients: readonly string[]): Promise<Uint8Array> {
  if (recipients.length === 0) throw new RangeError('Sealing needs at least one public key.');
  const { Encrypter } = await import('age-encryption');
  const encrypter = new Encrypter();
  for (const recipient of recipients) encrypter.addRecipient(recipient);
  return encrypter.encrypt(bytes);
}

/** Sealed bytes as letters: for what carries text alone, such as a share sheet. */
export async function armour(sealed: Uint8Array): Promise<Uint8Array> {
  const { armor } = await import('age-encryption');
  return new TextEncoder().encode(armor.encode(sealed));
}

/** What sealed bytes hold, opened with the first of the private keys that fits; else why not. */
export async function unseal(
  bytes: Uint8Array,
  identities: readonly string[],
): Promise<Uint8Array | SealFault> {
  if (identities.length === 0) return 'no-key';
  const { Decrypter, armor } = await import('age-encryption');
  const decrypter = new Decrypter();
  for (const identity of identities) decrypter.addIdentity(identity);
  try {
    const sealed = isArmoured(bytes) ? armor.decode(new TextDecoder().decode(bytes)) : bytes;
    if (!letters(sealed, 0, MOST_HEADER_BYTES).includes('\n--- ')) return 'tampered';
    return await decrypter.decrypt(sealed);
  } catch (error) {
    // The library tells this one case apart by its message alone.
    const noMatch = error instanceof Error && error.message.startsWith('no identity matched');
    return noMatch ? 'wrong-key' : 'tampered';
  }
}

/** A new pair of keys: the private half to keep, the public half for the shop. */
export async function makeKeys(): Promise<{ readonly identity: string; readonly recipient: string }> {
  const { generateX25519Identity, identityToRecipient } = await import('age-encryption');
  const identity = await generateX25519Identity();
  return { identity, recipient: await identityToRecipient(identity) };
}

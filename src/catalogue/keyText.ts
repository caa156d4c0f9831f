/**
 * The two halves of an age X25519 key as text, `age1...` and `AGE-SECRET-KEY-1...`: Bech32 of BIP 173 around 32 bytes.
 * The last six characters are a checksum, so a slip of the pen in the public half is found when the shop is built, not
 * when a buyer's order cannot be sealed.
 */

const CHARACTERS = 'qpzry9x8gf2tvdw0s3jn54khce6mua7l';
const GENERATORS = [0x3b6a57b2, 0x26508e6d, 0x1ea119fa, 0x3d4233dd, 0x2a1462b3];
const DATA = /^[02-9ac-hj-np-z]{58}$/;

/** BIP 173's checksum over values of 5 bits. */
function checksum(values: readonly number[]): number {
  return values.reduce((sum, value) => {
    const shifted = ((sum & 0x1ffffff) << 5) ^ value;
    return GENERATORS.reduce(
      (next, generator, bit) => ((sum >>> (25 + bit)) & 1 ? next ^ generator : next),
      shifted,
    );
  }, 1);
}

/** Whether `text` is `prefix`, a 1 and 32 bytes with the right checksum, all in small letters. */
function isBech32(text: string, prefix: string): boolean {
  if (!text.startsWith(`${prefix}1`) || !DATA.test(text.slice(prefix.length + 1))) return false;
  const codes = Array.from(prefix, (letter) => letter.charCodeAt(0));
  const data = Array.from(text.slice(prefix.length + 1), (letter) => CHARACTERS.indexOf(letter));
  return checksum([...codes.map((code) => code >> 5), 0, ...codes.map((code) => code & 31), ...data]) === 1;
}

/** Whether the text is an age X25519 public key, in small letters. */
export const isPublicKey = (text: string): boolean => isBech32(text, 'age');

/** Whether the text is an age X25519 private key, in capitals. */
export const isPrivateKey = (text: string): boolean =>
  text === text.toUpperCase() && isBech32(text.toLowerCase(), 'age-secret-key-');

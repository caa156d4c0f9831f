/**
 * The one-line public key of an age X25519 pair, `age1...`: Bech32 of BIP 173 around 32 bytes. Its six last characters
 * are a checksum, so a slip of the pen is found when the shop is built, not when a buyer's order cannot be sealed.
 */

const CHARACTERS = 'qpzry9x8gf2tvdw0s3jn54khce6mua7l';
const GENERATORS = [0x3b6a57b2, 0x26508e6d, 0x1ea119fa, 0x3d4233dd, 0x2a1462b3];
const FORM = /^age1[02-9ac-hj-np-z]{58}$/;

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

/** Whether the text is an age X25519 recipient, in small letters, with the right checksum. */
export function isPublicKey(text: string): boolean {
  if (!FORM.test(text)) return false;
  const prefix = Array.from('age', (letter) => letter.charCodeAt(0));
  const data = Array.from(text.slice(4), (letter) => CHARACTERS.indexOf(letter));
  return checksum([...prefix.map((code) => code >> 5), 0, ...prefix.map((code) => code & 31), ...data]) === 1;
}

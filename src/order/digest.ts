/** SHA-256 as 64 hexadecimal digits: what tells two files of one number apart, and one state of the shop from another. */

/** Digest of bytes, in small letters. */
export async function digestOf(bytes: Uint8Array): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', new Uint8Array(bytes));
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

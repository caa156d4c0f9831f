/** Bytes as base64 of RFC 4648, both ways and strictly. */

const FORM = /^(?:[A-Za-z0-9+/]{4})*(?:[A-Za-z0-9+/]{2}==|[A-Za-z0-9+/]{3}=)?$/;
/** A call takes only so many arguments. */
const AT_ONCE = 0x8000;

/** The bytes as base64 with padding. */
export function toBase64(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let from = 0; from < bytes.length; from += AT_ONCE)
    parts.push(String.fromCharCode(...bytes.subarray(from, from + AT_ONCE)));
  return btoa(parts.join(''));
}

/** The bytes that a base64 text holds; null where it is none: spaces, missing padding, other letters. */
export function fromBase64(text: string): Uint8Array | null {
  if (!FORM.test(text)) return null;
  const binary = atob(text);
  const bytes = new Uint8Array(binary.length);
  for (let at = 0; at < binary.length; at += 1) bytes[at] = binary.charCodeAt(at);
  return bytes;
}

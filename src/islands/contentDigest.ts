/** The name of a file that changes with its content: the first part of the content's SHA-256, as hexadecimal digits. */
export async function contentDigest(text: string): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return Array.from(new Uint8Array(digest).subarray(0, 8), (byte) => byte.toString(16).padStart(2, '0')).join(
    '',
  );
}

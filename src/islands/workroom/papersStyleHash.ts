/** The style of papers as a security policy names it. */
import { PRINT_STYLE } from '../../workroom/printStyle.ts';

/** SHA-256 of the style's text, as the source of a style-src. */
export async function papersStyleHash(): Promise<`sha256-${string}`> {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(PRINT_STYLE));
  return `sha256-${btoa(String.fromCharCode(...new Uint8Array(digest)))}`;
}

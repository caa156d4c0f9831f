/** Text as it may stand in an order: readable characters and line ends; nothing that hides or turns text around. */

/**
 * Control characters besides tab and line feed, halves of a character, spaces without width, and the marks that
 * embed or override the direction of writing: with them a text reads otherwise than it is stored.
 */
const UNWANTED = /(?![\t\n])\p{Cc}|[\u200b\u202a-\u202e\u2060\u2066-\u2069\ufeff]|\p{Surrogate}/gu;

/** Whether the text holds none of these. */
export const isPlainText = (text: string): boolean => text.search(UNWANTED) === -1;

/** The text without them: line ends as line feeds, composed (NFC), without space around it. */
export function plainText(text: string): string {
  return text.replace(/\r\n?/g, '\n').replace(UNWANTED, '').normalize('NFC').trim();
}

/** The text made plain and put on one line. */
export const plainLine = (text: string): string => plainText(text).replace(/\s+/g, ' ');

/** Pictures and PDFs of a prescription: told by their first bytes, never by their name; limited in size and number. */
import { toBase64 } from './base64.ts';
import { MOST_ATTACHED_BYTES, MOST_NAME_LETTERS } from './limits.ts';
import type { Attachment, AttachmentType } from './order.ts';
import { plainLine } from './text.ts';

/** First letters of each type, by code; `?` is any. */
const STARTS: readonly (readonly [AttachmentType, string])[] = [
  ['image/jpeg', '\xff\xd8\xff'],
  ['image/png', '\x89PNG\r\n\x1a\n'],
  ['image/webp', 'RIFF????WEBP'],
  // ISO base media of HEIF: the brands that cameras write.
  ...['heic', 'heix', 'mif1', 'msf1'].map((brand) => ['image/heic', `????ftyp${brand}`] as const),
  ['application/pdf', '%PDF-'],
];

/** What the first bytes say that a file is; null where it is none of the types that an order carries. */
export function attachmentType(bytes: Uint8Array): AttachmentType | null {
  const matches = (start: string) =>
    Array.from(start).every((letter, at) => letter === '?' || bytes[at] === letter.charCodeAt(0));
  return STARTS.find(([, start]) => matches(start))?.[0] ?? null;
}

/** End of a file name of each type, without its dot. */
export const ATTACHMENT_ENDS: Readonly<Record<AttachmentType, string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
  'image/heic': 'heic',
  'application/pdf': 'pdf',
};

/** Why a file cannot be attached. */
export type AttachmentFault = 'empty' | 'type' | 'too-large';

/**
 * A file as an attachment, or why it cannot be one; `takenBytes` is what the attachments before it take of the
 * order's limit.
 */
export function attach(name: string, bytes: Uint8Array, takenBytes: number): Attachment | AttachmentFault {
  if (bytes.length === 0) return 'empty';
  if (takenBytes + bytes.length > MOST_ATTACHED_BYTES) return 'too-large';
  const type = attachmentType(bytes);
  if (type === null) return 'type';
  return { name: plainLine(name).slice(0, MOST_NAME_LETTERS), type, base64: toBase64(bytes) };
}

/** The text of an order file: within the size limit, unsealed where it was sealed, in UTF-8. */
import { failure, type Result, success } from '../optics/result.ts';
import { attachmentType } from './attachment.ts';
import { type Refusal, refusal } from './refusal.ts';
import { isSealed, unseal } from './seal.ts';

/** An order with all the attachments that it may have takes 16.5 MB. Larger files need not be read at all. */
export const MOST_FILE_BYTES = 20_000_000;

export interface PlainText {
  readonly text: string;
  readonly bytes: Uint8Array;
  readonly sealed: boolean;
}

/** The refusal of a file by its size in bytes alone, before it is read; null where it may be read. */
export function sizeRefusal(sizeBytes: number): Refusal | null {
  if (sizeBytes === 0) return refusal('empty');
  if (sizeBytes <= MOST_FILE_BYTES) return null;
  const mega = (bytes: number) => (bytes / 1e6).toFixed(1);
  return refusal('too-large', { found: mega(sizeBytes), most: mega(MOST_FILE_BYTES) });
}

/** The text of a file that may be sealed, or why it has none. */
export async function plainBytes(
  file: Uint8Array,
  identities: readonly string[],
): Promise<Result<PlainText, Refusal>> {
  const wrong = sizeRefusal(file.length) ?? otherKind(file);
  if (wrong !== null) return failure(wrong);
  const sealed = isSealed(file);
  const bytes = sealed ? await unseal(file, identities) : file;
  if (typeof bytes === 'string') return failure(refusal(bytes));
  const inside = sizeRefusal(bytes.length) ?? otherKind(bytes);
  if (inside !== null) return failure(inside);
  const text = decode(bytes);
  return text === null ? failure(refusal('not-text')) : success({ text, bytes, sealed });
}

/** Files that people send instead of the order's. */
function otherKind(bytes: Uint8Array): Refusal | null {
  const type = attachmentType(bytes);
  if (type !== null) return refusal(type === 'application/pdf' ? 'pdf' : 'picture');
  const [first, second, third = 255] = bytes;
  const isZip = first === 0x50 && second === 0x4b && third < 9;
  const isGzip = first === 0x1f && second === 0x8b;
  return isZip || isGzip ? refusal('zip') : null;
}

function decode(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

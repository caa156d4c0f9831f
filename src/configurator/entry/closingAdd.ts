/** An add at the very end of a pasted prescription: read for the last eye, and often meant for both. */
import type { Eye } from '../../optics/types.ts';
import type { Paste } from './readPaste.ts';

const CLOSING = /\badd\b[^\p{L}\n]*\d[^\p{L}\n]*$/iu;

interface ClosingAdd {
  /** As it stands in the field. */
  readonly add: string;
  readonly read: Eye;
  readonly other: Eye;
}

/** Null where no add ends the text, or both eyes have one, or either was not read. Never taken for both by itself. */
export function closingAdd(text: string, { eyes, entries }: Paste): ClosingAdd | null {
  if (eyes.right === null || eyes.left === null || !CLOSING.test(text.trim())) return null;
  const [right, left] = [entries['right.add'] ?? '', entries['left.add'] ?? ''];
  if ((right === '') === (left === '')) return null;
  return left === ''
    ? { add: right, read: 'right', other: 'left' }
    : { add: left, read: 'left', other: 'right' };
}

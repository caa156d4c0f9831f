/** What is kept on the visitor's device: nothing, unless they ticked it. */
import { belongsToFrame, type Entries, FIELDS, type Field } from './fields.ts';

/** The one key that is used. Another form of what is kept takes another number. */
export const KEPT_AS = 'bevelbook.worksheet.1';

/** The longest text that is kept of a field; more is no entry. */
export const LONGEST_ENTRY = 200;

/** The part of the browser's store that is used. */
export type Shelf = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

interface Kept {
  /** Entries that hold for every frame. */
  readonly common: Entries;
  /** Entries of a frame, by its id. */
  readonly frames: Readonly<Record<string, Entries>>;
}

/** What was kept for a frame, with what holds for all; null where nothing is kept or it cannot be read. */
export function recall(shelf: Shelf, frame: string): Entries | null {
  const kept = readKept(shelf);
  return kept && { ...kept.common, ...(Object.hasOwn(kept.frames, frame) ? kept.frames[frame] : {}) };
}

/** Keeps the entries; false where the browser refuses to. */
export function keep(shelf: Shelf, frame: string, entries: Entries): boolean {
  const { frames } = readKept(shelf) ?? { frames: {} };
  const part = (ofFrame: boolean) => only(entries, (field) => belongsToFrame(field) === ofFrame);
  const kept: Kept = { common: part(false), frames: { ...frames, [frame]: part(true) } };
  return tried(() => shelf.setItem(KEPT_AS, JSON.stringify(kept)));
}

/** Removes all that was ever kept; false where the browser refuses to. */
export const forget = (shelf: Shelf): boolean => tried(() => shelf.removeItem(KEPT_AS));

/** Whether something is there that can no longer be read. */
export function isDamaged(shelf: Shelf): boolean {
  try {
    return shelf.getItem(KEPT_AS) !== null && readKept(shelf) === null;
  } catch {
    return false;
  }
}

function readKept(shelf: Shelf): Kept | null {
  try {
    const text = shelf.getItem(KEPT_AS);
    const found: unknown = text === null ? null : JSON.parse(text);
    if (!isRecord(found)) return null;
    const frames = isRecord(found['frames']) ? found['frames'] : {};
    return {
      common: only(found['common'], (field) => !belongsToFrame(field)),
      frames: Object.fromEntries(
        Object.entries(frames).map(([id, entries]) => [id, only(entries, belongsToFrame)]),
      ),
    };
  } catch {
    // Storage that is switched off throws; so does text that is no longer ours.
    return null;
  }
}

/** Whether a value is an object with keys. */
export const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The known fields of a value that hold text, and pass. */
export function only(value: unknown, passes: (field: Field) => boolean): Entries {
  if (!isRecord(value)) return {};
  const known = FIELDS.filter((field) => Object.hasOwn(value, field) && passes(field));
  return Object.fromEntries(
    known.flatMap((field) => {
      const text = value[field];
      return typeof text === 'string' && text !== '' && text.length <= LONGEST_ENTRY ? [[field, text]] : [];
    }),
  );
}

/** Whether the action did not throw: storage that is full or switched off does. */
export function tried(action: () => void): boolean {
  try {
    action();
    return true;
  } catch {
    return false;
  }
}

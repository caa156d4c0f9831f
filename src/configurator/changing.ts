/** Changes of advice put into the entries of a worksheet, and taken back: loaded with the advice. */
import type { PackageChange } from '../quote/change.ts';
import { CHANGED, isChanged } from './changedFields.ts';
import type { Choices } from './choices.ts';
import { belongsToFrame, type Entries, type Field, isHeight } from './fields.ts';
import type { Applied, Worksheet } from './worksheet.ts';

/**
 * Entries with the changes made and every other choice held where it is: a choice that only followed from another
 * must not follow it elsewhere. A change of frame is none of the entries. In another size the heights are measured
 * again: what advice took for them is an estimate that no lens is to be cut by.
 */
function withChanges(entries: Entries, choices: Choices, changes: readonly PackageChange[]): Entries {
  const held = CHANGED.flatMap((field) => {
    const value = choices[field];
    return value === null || value === '' ? [] : [[field, value] as const];
  });
  const made = changes.flatMap(({ kind, value }) => (isChanged(kind) ? [[kind, value] as const] : []));
  const staying = asksHeights(changes)
    ? Object.fromEntries(Object.entries(entries).filter(([field]) => !isHeight(field)))
    : entries;
  return { ...staying, ...Object.fromEntries(held), ...Object.fromEntries(made) };
}

const asksHeights = (changes: readonly PackageChange[]) => changes.some(({ kind }) => kind === 'size');

/** Entries with what the advice changed as it was before, all else as it is now. */
function withoutChanges(entries: Entries, { before, heights }: Applied): Entries {
  const isBack = (field: string) => isChanged(field) || (heights && isHeight(field));
  const kept = Object.fromEntries(Object.entries(entries).filter(([field]) => !isBack(field)));
  const back = Object.fromEntries(Object.entries(before).filter(([field]) => isBack(field)));
  return { ...kept, ...back };
}

/**
 * Entries for the other frame that the changes lead to: its size and colourway, the lenses as changed, and whatever
 * was not measured in this frame.
 */
export function entriesElsewhere(
  entries: Entries,
  choices: Choices,
  changes: readonly PackageChange[],
): Entries {
  const frame = changes.find(({ kind }) => kind === 'frame');
  const chosen = { size: frame?.size ?? '', colourway: frame?.colourway ?? '' };
  const all = Object.entries(withChanges(entries, choices, changes));
  const going = all.filter(([field]) => !belongsToFrame(field as Field));
  return { ...Object.fromEntries(going), ...chosen };
}

/** Makes the changes of some advice; `names` are what it is told by. */
export function applyChanges(
  { entries, applied, read }: Worksheet,
  changes: readonly PackageChange[],
  names: string,
): void {
  const before = entries.get();
  const heights =
    asksHeights(changes) && Object.entries(before).some(([field, text]) => isHeight(field) && text);
  applied.set({ before, names, heights });
  entries.set(withChanges(before, read.get().choices, changes));
}

/** Takes the last advice back. */
export function undoChanges({ entries, applied }: Worksheet): void {
  const last = applied.get();
  if (last === null) return;
  applied.set(null);
  entries.set(withoutChanges(entries.get(), last));
}

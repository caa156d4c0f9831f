/** Changes of advice put into the entries of a worksheet, and taken back. */
import type { PackageChange } from '../quote/change.ts';
import type { Choices } from './choices.ts';
import type { Entries } from './fields.ts';

/** What advice may change, by its field. */
const CHANGED = ['size', 'colourway', 'design', 'material', 'tint', 'coating', 'blank'] as const;

/** The fields that advice may change. */
export type ChangedField = (typeof CHANGED)[number];

/** Whether a field is one that advice may change. */
export const isChanged = (field: string): field is ChangedField =>
  (CHANGED as readonly string[]).includes(field);

/**
 * Entries with the changes made and every other choice held where it is: a choice that only followed from another
 * must not follow it elsewhere. A change of frame is none of the entries.
 */
export function withChanges(entries: Entries, choices: Choices, changes: readonly PackageChange[]): Entries {
  const held = CHANGED.flatMap((field) => {
    const value = choices[field];
    return value === null || value === '' ? [] : [[field, value] as const];
  });
  const made = changes.flatMap(({ kind, value }) => (isChanged(kind) ? [[kind, value] as const] : []));
  return { ...entries, ...Object.fromEntries(held), ...Object.fromEntries(made) };
}

/** Entries with what advice may change as it was before, all else as it is now. */
export function withoutChanges(entries: Entries, before: Entries): Entries {
  const kept = Object.fromEntries(Object.entries(entries).filter(([field]) => !isChanged(field)));
  const back = Object.fromEntries(Object.entries(before).filter(([field]) => isChanged(field)));
  return { ...kept, ...back };
}

/** Whether the changes lead to another frame's page. */
export const leadsElsewhere = (changes: readonly PackageChange[]): boolean =>
  changes.some(({ kind }) => kind === 'frame');

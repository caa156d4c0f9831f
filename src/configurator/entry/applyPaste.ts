/** What a pasted prescription changes among the entries: told, so that nothing is replaced in silence. */
import { type Entries, FIELDS, type Field, textOf } from '../fields.ts';

export interface Replaced {
  readonly field: Field;
  readonly before: string;
  /** Empty: the text has nothing there. */
  readonly now: string;
}

/** The fields whose entry differs from what the text says, in the order of the form. */
export function replacedBy(entries: Entries, pasted: Entries): readonly Replaced[] {
  return FIELDS.flatMap((field) => {
    const now = pasted[field];
    const before = textOf(entries, field);
    return now === undefined || now === before ? [] : [{ field, before, now }];
  });
}

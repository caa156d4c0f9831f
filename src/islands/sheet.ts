/** The worksheet that the components of a page share. */
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { FieldFault } from '../configurator/fieldFault.ts';
import type { Field } from '../configurator/fields.ts';
import type { Worksheet } from '../configurator/worksheet.ts';
import { useStore } from './useStore.ts';

export const Sheet = createContext<Worksheet | null>(null);

/** What entries need of the stores that they belong to: those of a worksheet, or of the list of frames. */
export type EntryStores = Pick<Worksheet, 't' | 'digits' | 'entries' | 'shownFaults' | 'enter' | 'leave'>;

/** Stores of entries outside of a worksheet. */
export const Entering = createContext<EntryStores | null>(null);

/** The stores of this page's worksheet. Throws outside of one. */
export function useSheet(): Worksheet {
  const sheet = useContext(Sheet);
  if (sheet === null) throw new Error('This component stands outside of a worksheet.');
  return sheet;
}

/** The stores that an entry belongs to. Throws where there are none. */
export function useEntryStores(): EntryStores {
  const [alone, sheet] = [useContext(Entering), useContext(Sheet)];
  const found = alone ?? sheet;
  if (found === null) throw new Error('This entry stands outside of any stores.');
  return found;
}

/** What is typed in one field, as it stands. */
export function useEntry(field: Field): string {
  return useStore(useEntryStores().entries, { keys: [field], turn: 'first' })[field] ?? '';
}

/** The fault to show at a field. */
export function useFault(field: Field): FieldFault | undefined {
  return useStore(useEntryStores().shownFaults).find((fault) => fault.field === field);
}

/** The id of a field's element; its fault and note have theirs behind it. */
export const idOf = (field: Field): string => `ws-${field.replaceAll('.', '-')}`;

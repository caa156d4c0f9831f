/** The worksheet that the components of a page share. */
import { useStore } from '@nanostores/preact';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { FieldFault } from '../configurator/fieldFault.ts';
import type { Field } from '../configurator/fields.ts';
import type { Worksheet } from '../configurator/worksheet.ts';

export const Sheet = createContext<Worksheet | null>(null);

/** The stores of this page's worksheet. Throws outside of one. */
export function useSheet(): Worksheet {
  const sheet = useContext(Sheet);
  if (sheet === null) throw new Error('This component stands outside of a worksheet.');
  return sheet;
}

/** What is typed in one field, as it stands. */
export function useEntry(field: Field): string {
  return useStore(useSheet().entries, { keys: [field] })[field] ?? '';
}

/** The fault to show at a field. */
export function useFault(field: Field): FieldFault | undefined {
  return useStore(useSheet().shownFaults).find((fault) => fault.field === field);
}

/** The id of a field's element; its fault and note have theirs behind it. */
export const idOf = (field: Field): string => `ws-${field.replaceAll('.', '-')}`;

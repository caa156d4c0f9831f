/** Whether leaving the page loses what somebody typed. */
import { type Entries, FIELDS, type Field } from '../fields.ts';
import { groupOf } from './parts.ts';

/** Chosen with one press, and chosen again as quickly. */
const PICKED: readonly Field[] = ['pd.mode', 'own.family', 'own.mounting'];

const isTyped = (field: Field): boolean =>
  ['prescription', 'measures', 'own'].includes(groupOf(field)) && !PICKED.includes(field);

/** True where figures of a prescription, a face or an own frame stand in no entries that are held elsewhere. */
export function wouldLose(entries: Entries, held: readonly Entries[]): boolean {
  const typed = FIELDS.filter((field) => isTyped(field) && (entries[field] ?? '').trim() !== '');
  return typed.length > 0 && !held.some((other) => typed.every((field) => other[field] === entries[field]));
}

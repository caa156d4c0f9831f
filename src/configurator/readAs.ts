/** What an entry was read as, where that is not what it says: told beside the field, so that nothing is silent. */
import { type Entries, type Field, textOf } from './fields.ts';
import { readNumber } from './readNumber.ts';

/** Key of the sentence `worksheet.read.<key>` for a field, or null where the entry says it already. */
export function readAs(entries: Entries, field: Field): 'axis-180' | 'plano' | 'no-cylinder' | null {
  const text = textOf(entries, field);
  const reading = readNumber(text);
  if (reading.kind !== 'number' || reading.value !== 0) return null;
  if (field.endsWith('.axis')) return 'axis-180';
  const word = !/\d/.test(text);
  if (word && field.endsWith('.sphere')) return 'plano';
  return word && field.endsWith('.cylinder') ? 'no-cylinder' : null;
}

/** Each sentence is given once: files of one language are read as one, and dots and groups say the same. */
import type { Check, Content } from '../content.ts';
import type { ContentFault, FieldPath } from '../fault.ts';
import { faultAt } from '../reading/entry.ts';
import type { Origin } from '../reading/origin.ts';
import { textsOf } from '../schema/words.ts';

function twice(origin: Origin, path: FieldPath, key: string, first: string): ContentFault {
  const detail = {
    code: 'duplicate-key',
    expected: `"${key}" once in the words of a language`,
    received: `it again, after ${first}`,
    hint: 'Remove one of the two.',
  } as const;
  return faultAt(origin, path, detail, 'key');
}

/** Keys that two files of a language, or two spellings in one file, both give. */
export const checkWords: Check = ({ words }: Content) => {
  const faults: ContentFault[] = [];
  const seen = new Map<string, string>();
  for (const { language, entry } of words) {
    if (entry.value === null) continue;
    for (const { key, path } of textsOf(entry.value)) {
      const name = `${language} ${key}`;
      const first = seen.get(name);
      if (first === undefined) seen.set(name, entry.origin.source.path);
      else faults.push(twice(entry.origin, path, key, first));
    }
  }
  return faults;
};

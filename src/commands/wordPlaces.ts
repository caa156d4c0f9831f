/** Wrong sentences of prices and rules as faults at their place in the words' files. */
import type { ContentFault } from '../catalogue/fault.ts';
import { gatherContent } from '../catalogue/gatherContent.ts';
import type { ContentFolder } from '../catalogue/load.ts';
import { faultAt } from '../catalogue/reading/entry.ts';
import { faultOfFile } from '../catalogue/reading/sourceText.ts';
import { textsOf } from '../catalogue/schema/words.ts';
import type { WordFault } from '../quote/wordFaults.ts';

/** The faults in files of `language`; a sentence that is missing belongs to the file of its first part. */
export function placeWordFaults(
  { files, name }: ContentFolder,
  language: string,
  faults: readonly WordFault[],
): ContentFault[] {
  const { content } = gatherContent(files, name);
  const placed = content.words
    .filter((file) => file.language === language)
    .flatMap(({ entry: { origin, value } }) => [...textsOf(value ?? {})].map((one) => ({ ...one, origin })));
  return faults.map(({ key, message, expected }) => {
    const found = placed.find((one) => one.key === key);
    const detail = {
      code: found === undefined ? 'missing-field' : 'wrong-value',
      expected: `${key}: ${expected}`,
      received: found === undefined ? 'nothing' : `"${found.text}"`,
      hint: `${message} ${found === undefined ? 'Add it.' : 'Mend it, or take it out.'}`,
    } as const;
    const file = `${name}/words/${language}/${key.split('.')[0]}.yaml`;
    return found === undefined ? faultOfFile(file, detail) : faultAt(found.origin, found.path, detail);
  });
}

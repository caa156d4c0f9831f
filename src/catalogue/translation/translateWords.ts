/** The words of another language over those of the first, and where they differ in keys or slots. */
import type { Words } from '../catalogue.ts';
import type { ContentFault, FieldPath } from '../fault.ts';
import { faultAt } from '../reading/entry.ts';
import type { Origin } from '../reading/origin.ts';
import { textsOf } from '../schema/words.ts';
import type { WordsFile } from './files.ts';
import { slotsOf } from './translate.ts';
import type { MissingWords } from './untranslated.ts';

interface Placed {
  readonly text: string;
  readonly origin: Origin;
  readonly path: FieldPath;
}

/** What the owner alone reads is in the shop's first language, and needs no other. */
const OWNERS = /^(?:page\.preview|workroom|workroomPage)\./;

/** Every sentence of a language with its place. */
function placedWords(files: readonly WordsFile[], language: string): ReadonlyMap<string, Placed> {
  const placed = files
    .filter((file) => file.language === language)
    .flatMap(({ entry: { origin, value } }) =>
      [...textsOf(value ?? {})].map(({ key, path, text }) => [key, { text, origin, path }] as const),
    );
  return new Map(placed);
}

/** The words of `into`; what it lacks stays as it is in `from`. */
export function translateWords(files: readonly WordsFile[], from: string, into: string) {
  const own = placedWords(files, from);
  const told = placedWords(files, into);
  const words: Record<string, string> = {};
  const faults: ContentFault[] = [];
  const missing = new Map<string, MissingWords['texts'][number][]>();
  for (const [key, { text, origin }] of own) {
    if (OWNERS.test(key)) {
      words[key] = text;
      continue;
    }
    const found = told.get(key);
    const fits = found !== undefined && slotsOf(found.text) === slotsOf(text);
    words[key] = fits ? found.text : text;
    const file = origin.source.path;
    if (found === undefined) missing.set(file, [...(missing.get(file) ?? []), { key, text }]);
    else if (!fits) faults.push(otherSlots(found, text));
  }
  for (const [key, { origin, path }] of told)
    if (!own.has(key)) faults.push(leftOver(origin, path, key, from));
  const missingWords = [...missing].map(([file, texts]): MissingWords => {
    return { language: into, file: file.replace(`/words/${from}/`, `/words/${into}/`), own: file, texts };
  });
  return { words: words as Words, faults, missingWords };
}

const otherSlots = ({ origin, path, text }: Placed, own: string): ContentFault =>
  faultAt(origin, path, {
    code: 'other-slots',
    expected: slotsOf(own) || 'a text without slots',
    received: slotsOf(text) || 'none',
    hint: `Use each slot of "${own}", spelt as there.`,
  });

const leftOver = (origin: Origin, path: FieldPath, key: string, from: string): ContentFault =>
  faultAt(
    origin,
    path,
    {
      code: 'translation-left-over',
      expected: `a key that the words of ${from} have`,
      received: `"${key}"`,
      hint: 'Remove it, or correct its name.',
    },
    'key',
  );

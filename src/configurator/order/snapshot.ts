/** The form at one moment as a text, to tell whether anything was changed since. */
import type { Answered } from '../basket/basketStores.ts';
import { sizeOf } from './attaching.ts';
import type { Files } from './draftOf.ts';
import type { Typed } from './typed.ts';

/** The same text for the same form: what is empty is left out, and the order of typing does not count. */
export function snapshotOf(typed: Typed, files: Files, answered: Answered | null): string {
  const texts = Object.entries(typed)
    .filter(([, text]) => text !== '')
    .sort(([one], [other]) => (one < other ? -1 : 1));
  const attached = Object.entries(files).flatMap(([id, all]) =>
    all.map((file) => [id, file.name, sizeOf(file)]),
  );
  const { request = null, whole = null } = answered?.answer ?? {};
  return JSON.stringify([texts, attached, request, whole?.price.total ?? null]);
}

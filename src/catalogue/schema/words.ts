/** What a file in content/words/<language> holds: sentences and labels, in groups. */
import * as z from 'zod/mini';
import type { FieldPath } from '../fault.ts';

/** Groups of texts. */
export interface WordsTree {
  readonly [key: string]: string | WordsTree;
}

const SENTENCE = 'a text, or a group of texts';
const SLOTTED = 'a text whose braces hold the name of a slot, such as {mm}';

/** A brace that opens or closes no slot would be shown to the shopper. */
const sentence = z
  .string({ error: 'a text' })
  .check(z.regex(/^(?:[^{}]|\{[A-Za-z][A-Za-z0-9]*\})*$/, { error: SLOTTED }));

const tree: z.ZodMiniType<WordsTree> = z.lazy(() =>
  z.record(z.string(), z.union([sentence, tree], { error: SENTENCE }), {
    error: SENTENCE,
  }),
);

/** Schema of a words file: groups as deep as wanted, texts at their ends. */
export function wordsSchema() {
  return tree;
}

/** Every text of a file: its whole key, and the path that leads to it. */
export function* textsOf(
  tree: WordsTree,
  path: FieldPath = [],
): Generator<{ key: string; path: FieldPath; text: string }> {
  for (const [part, value] of Object.entries(tree)) {
    const here = [...path, part];
    if (typeof value === 'string') yield { key: here.join('.'), path: here, text: value };
    else yield* textsOf(value, here);
  }
}

/** `{ rule: { "blank-too-small": { short: "..." } } }` as `{ "rule.blank-too-small.short": "..." }`. */
export function flattenWords(words: WordsTree, prefix = ''): Readonly<Record<string, string>> {
  const flat: Record<string, string> = {};
  for (const [key, value] of Object.entries(words)) {
    if (typeof value === 'string') flat[prefix + key] = value;
    else Object.assign(flat, flattenWords(value, `${prefix}${key}.`));
  }
  return flat;
}

/** `npm run new -- translation`: the file for the texts of one thing in another language of the shop. */
import { join } from 'node:path';
import { stringify } from 'yaml';
import type { Content } from '../../catalogue/content.ts';
import { FOLDERS } from '../../catalogue/reading/folders.ts';
import { fileSchema } from '../../catalogue/schema/editorSchemas.ts';
import { valueAt } from '../../catalogue/schema/parse.ts';
import {
  TEXTS,
  type TextFields,
  type TextShape,
  type TranslatedKind,
} from '../../catalogue/translation/texts.ts';
import { schemaLine } from '../schemaLine.ts';
import type { Answers, Known, Recipe } from './recipe.ts';

/** A thing with texts, by the path of its file. */
interface Told {
  readonly path: string;
  readonly of: TranslatedKind;
  readonly id: string;
  /** Its fields as they were written. */
  readonly raw: unknown;
  readonly hasBody: boolean;
}

const KINDS = Object.keys(TEXTS) as TranslatedKind[];

function allTold(content: Content): Told[] {
  return KINDS.flatMap((of) => {
    const entries = of === 'shop' ? (content.shop === null ? [] : [content.shop]) : content[of];
    return entries.map(({ id, origin }) => ({
      path: of === 'shop' ? 'shop.yaml' : `${FOLDERS[of].folder}/${id}${FOLDERS[of].ending}`,
      of,
      id: of === 'shop' ? 'shop' : id,
      raw: origin.raw,
      hasBody: origin.body.trim() !== '',
    }));
  });
}

const nameOf = ({ path }: Told) => path.replace(/\.(?:md|yaml)$/, '');

/** What has no file yet in the language. */
function untold({ content }: Known, { language }: Answers): Told[] {
  const has = (of: TranslatedKind, id: string) =>
    content.translations.some((one) => one.language === language && one.of === of && one.entry.id === id);
  return allTold(content).filter(({ of, id }) => !has(of, id));
}

function languages({ content }: Known): string[] {
  const others = valueAt(content.shop?.origin.raw, ['otherLanguages']);
  return Array.isArray(others) ? others.map(String) : [];
}

/** The texts of a thing in the shape of its translation; undefined where it has none. */
function textsOf(shape: TextShape, own: unknown): unknown {
  if (own === null || own === undefined) return undefined;
  if (typeof shape === 'string') return own;
  if ('group' in shape) return groupOf(shape.group, own);
  const items = Array.isArray(own) ? own : [];
  if (items.length === 0) return undefined;
  if ('inOrder' in shape) return items.map((item) => valueAt(item, [shape.inOrder]));
  const each = (item: unknown) =>
    'text' in shape
      ? valueAt(item, [shape.text])
      : Object.fromEntries(shape.texts.map((one) => [one, valueAt(item, [one])]));
  return Object.fromEntries(items.map((item) => [String(valueAt(item, [shape.byKey])), each(item)]));
}

function groupOf(fields: TextFields, own: unknown): unknown {
  const texts = Object.entries(fields).flatMap(([name, shape]) => {
    const text = textsOf(shape, valueAt(own, [name]));
    return text === undefined ? [] : [[name, text] as const];
  });
  return texts.length === 0 ? undefined : Object.fromEntries(texts);
}

function textOf(told: Told, path: string, language: string): string {
  const own = stringify(groupOf(TEXTS[told.of], told.raw) ?? {}, { lineWidth: 0 });
  const lines = [
    schemaLine(path),
    `# The texts of ${told.path} in ${language}: translate each and take the sign # away. Until then the shop shows them as they are.`,
    ...own
      .trimEnd()
      .split('\n')
      .map((line) => `# ${line}`),
  ];
  const fields = `${lines.join('\n')}\n`;
  return path.endsWith('.md') ? `---\n${fields}---\n` : fields;
}

/** A file of texts that stand there as remarks, to be translated one by one. */
export const translationRecipe: Recipe = {
  name: 'translation',
  says: 'the texts of a frame, an option, a page, ... in another language',
  questions: [
    { name: 'language', asks: 'Language, of otherLanguages in shop.yaml', choices: languages },
    {
      name: 'of',
      asks: 'Of what, that has no such file yet',
      choices: (known, answers) => untold(known, answers).map(nameOf),
    },
  ],
  value: () => ({}),
  schema: (currency) => fileSchema('translation-pages', currency),
  changes: (answers, known) => {
    const told = untold(known, answers).find((one) => nameOf(one) === answers['of']);
    if (told === undefined) return new Error('That is translated already.');
    const { language = '' } = answers;
    const path = `translations/${language}/${told.path}`;
    return [{ path: join(known.folder, path), text: textOf(told, path, language), fresh: true }];
  },
  next: ({ of }, { content }) => {
    const told = allTold(content).find((one) => nameOf(one) === of);
    const story =
      'Translate the text below its fields, and put it below the second line --- of the new file.';
    return [
      'Translate each text and take the sign # away; figures and prices stay in the first file.',
      ...(told?.hasBody ? [story] : []),
      'npm run check tells what is not translated yet.',
    ];
  },
};

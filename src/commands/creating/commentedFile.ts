/** The text of a new content file: its fields, each below a comment that says what it means. */
import { Document, isMap, isScalar, isSeq, type Node, type YAMLMap } from 'yaml';
import { editorSchema, type FileKind } from '../../catalogue/schema/editorSchemas.ts';
import type { Currency } from '../../catalogue/schema/money.ts';
import { schemaLine } from '../schemaLine.ts';

type Part = { readonly [keyword: string]: unknown };

const WIDEST = 100;

/** A sentence in lines of comment. */
function comment(text: string): string {
  const lines = [''];
  for (const word of text.split(' ')) {
    const line = lines.at(-1) ?? '';
    if (line.length + word.length > WIDEST) lines.push(` ${word}`);
    else lines[lines.length - 1] = `${line} ${word}`;
  }
  return lines.join('\n');
}

/** Short lists and groups stand in one line, as an owner would write them. */
function inOneLine(node: Node): boolean {
  if (isSeq(node)) return node.items.every((item) => isScalar(item));
  return (
    isMap(node) && node.items.length <= 4 && node.items.every(({ value }) => isScalar(value) || isFlow(value))
  );
}

const isFlow = (node: unknown): boolean => (isSeq(node) || isMap(node)) && node.flow === true;

function lay(node: unknown): void {
  if (isSeq(node)) for (const item of node.items) lay(item);
  if (isMap(node)) for (const { value } of node.items) lay(value);
  if ((isSeq(node) || isMap(node)) && inOneLine(node)) node.flow = true;
}

/** Comments above the fields of a map that stands in lines of its own, and of the first of a list of such. */
function explain(map: YAMLMap, schema: Part | undefined, isItem: boolean): void {
  const fields = (schema?.['properties'] ?? {}) as Record<string, Part>;
  for (const [at, { key, value }] of map.items.entries()) {
    if (!isScalar(key)) continue;
    const field = fields[String(key.value)];
    const description = field?.['description'];
    // Before the dash of an item, not behind it.
    const commented = isItem && at === 0 ? map : key;
    if (typeof description === 'string') commented.commentBefore = comment(description);
    const inner = isSeq(value) ? value.items[0] : value;
    const part = isSeq(value) ? field?.['items'] : field;
    if (isMap(inner) && !inner.flow) explain(inner, part as Part | undefined, isSeq(value));
  }
}

const schemas = new Map<string, Part>();

/** Made once: an import writes a thousand files of one kind. */
function schemaOf(kind: FileKind, currency: Currency): Part {
  const key = `${kind} ${currency.code}`;
  const schema = schemas.get(key) ?? (editorSchema(kind, currency) as Part);
  schemas.set(key, schema);
  return schema;
}

/** The YAML of `value` with its comments, below the line that names its schema; it ends with a line end. */
export function commentedYaml(kind: FileKind, line: string, currency: Currency, value: unknown): string {
  const document = new Document(value);
  lay(document.contents);
  if (isMap(document.contents)) {
    document.contents.flow = false;
    explain(document.contents, schemaOf(kind, currency), false);
  }
  const text = document.toString({ lineWidth: 0 });
  return `${line}\n${text.replace(/\[ ([^"'[\]]*) \]/g, '[$1]')}`;
}

/** The text of a new Markdown file at `path` below the content folder: the schema's line, the fields, the body. */
export function commentedFile(
  kind: FileKind,
  path: string,
  currency: Currency,
  value: unknown,
  body: string,
): string {
  const fields = commentedYaml(kind, schemaLine(path) ?? '', currency, value);
  return `---\n${fields}---\n${body === '' ? '' : `\n${body}\n`}`;
}

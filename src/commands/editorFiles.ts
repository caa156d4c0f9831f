/** The files that editors take their help from: one JSON Schema for each kind of content file, in `.schemas`. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { editorSchema, FILE_KINDS } from '../catalogue/schema/editorSchemas.ts';
import type { Shop } from '../catalogue/shop.ts';

/** Folder of the schemas inside the content folder; the reader of content passes over names that begin with a point. */
export const SCHEMAS = '.schemas';

/** Each file with its text, for a shop's currency. */
export function editorFiles(
  folder: string,
  { currency, currencyDigits }: Pick<Shop, 'currency' | 'currencyDigits'>,
): { readonly path: string; readonly text: string }[] {
  return FILE_KINDS.map((kind) => ({
    path: join(folder, SCHEMAS, `${kind}.json`),
    text: `${JSON.stringify(editorSchema(kind, { code: currency, digits: currencyDigits }), null, 2)}\n`,
  }));
}

/** Which of the files are not as they would be written now; null where the shop has none of them. */
export function staleEditorFiles(...shop: Parameters<typeof editorFiles>): readonly string[] | null {
  const files = editorFiles(...shop).map((file) => ({ ...file, found: textOf(file.path) }));
  if (files.every(({ found }) => found === null)) return null;
  return files.filter(({ text, found }) => found !== text).map(({ path }) => path);
}

function textOf(path: string): string | null {
  try {
    return readFileSync(path, 'utf8').replaceAll('\r\n', '\n');
  } catch {
    return null;
  }
}

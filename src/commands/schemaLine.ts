/** The line at the head of a content file that leads an editor to its schema. */
import { placeFile } from '../catalogue/reading/folders.ts';
import type { FileKind } from '../catalogue/schema/editorSchemas.ts';

const KINDS: Readonly<Record<string, FileKind>> = {
  shop: 'shop',
  words: 'words',
  frames: 'frame',
  outlines: 'outline',
  designs: 'design',
  materials: 'material',
  tints: 'tint',
  coatings: 'coating',
  promotions: 'promotion',
  pages: 'page',
};

/** The line for the file at `path` below the content folder, without a line end; null where it is no such file. */
export function schemaLine(path: string): string | null {
  const placed = placeFile('content', path);
  const kind = placed.kind === 'translation' ? `translation-${placed.of}` : KINDS[placed.kind];
  const up = '../'.repeat(path.split('/').length - 1);
  return kind === undefined ? null : `# yaml-language-server: $schema=${up}.schemas/${kind}.json`;
}

/** The text of that file with the line, where it names no schema yet; null where nothing is to be done. */
export function withSchemaLine(path: string, text: string): string | null {
  return withLine(schemaLine(path), path, text);
}

/** The line for costs.yaml, which lies beside the content folder `name`. */
export const costsSchemaLine = (name: string): string =>
  `# yaml-language-server: $schema=${name}/.schemas/costs.json`;

/** A text with the line at its head, where it names no schema yet; null where nothing is to be done. */
export function withLine(line: string | null, path: string, text: string): string | null {
  if (line === null || text.includes('yaml-language-server:')) return null;
  const eol = text.includes('\r\n') ? '\r\n' : '\n';
  if (!path.endsWith('.md')) return text.startsWith('\uFEFF') ? null : `${line}${eol}${text}`;
  const opening = /^---[ \t]*\r?\n/.exec(text);
  return opening === null ? null : `${opening[0]}${line}${eol}${text.slice(opening[0].length)}`;
}

/** Puts each file of the content folder in its place, as fields and text, before any schema. */
import type { ContentFault } from '../fault.ts';
import type { TranslatedKind } from '../translation/texts.ts';
import { readOrigin } from './entry.ts';
import { FOLDERS, type FolderKind, placeFile } from './folders.ts';
import type { Origin } from './origin.ts';
import { type PictureFile, pictureKind } from './pictureKind.ts';
import { decodeSource, faultOfFile, type SourceFile } from './sourceText.ts';

/** A file whose place in the shop is known. */
interface PlacedFile {
  readonly id: string;
  readonly origin: Origin;
}

/** The files of each folder, and what is wrong with files as such. */
export interface Sorted {
  shop: Origin | null;
  readonly words: { readonly language: string; readonly origin: Origin }[];
  readonly pictures: PictureFile[];
  readonly translations: (PlacedFile & { readonly language: string; readonly of: TranslatedKind })[];
  readonly entries: Record<FolderKind, PlacedFile[]>;
  readonly faults: ContentFault[];
}

/** Sorts files by place; two whose names differ in case alone are one file on some machines, so a fault. */
export function sortFiles(files: readonly SourceFile[], root: string): Sorted {
  const entries = Object.fromEntries(
    Object.keys(FOLDERS).map((kind) => [kind, []]),
  ) as unknown as Sorted['entries'];
  const sorted: Sorted = { shop: null, words: [], pictures: [], translations: [], entries, faults: [] };
  const taken = new Map<string, string>();
  for (const { file, placed } of inOrder(files, root)) {
    if (placed.kind === 'ignored') continue;
    const twin = taken.get(file.path.toLowerCase());
    if (twin !== undefined) {
      sorted.faults.push(twinFault(file.path, twin));
      continue;
    }
    taken.set(file.path.toLowerCase(), file.path);
    if (placed.kind === 'fault') {
      sorted.faults.push(placed.fault);
      continue;
    }
    if (placed.kind === 'picture') {
      sorted.pictures.push(pictureFile(file, placed.name));
      continue;
    }
    const decoded = decodeSource(file);
    const origin = decoded.ok ? readOrigin(decoded.source) : unreadable(file.path, decoded.fault);
    if (placed.kind === 'shop') sorted.shop = origin;
    else if (placed.kind === 'words') sorted.words.push({ language: placed.language, origin });
    else if (placed.kind === 'translation')
      sorted.translations.push({ language: placed.language, of: placed.of, id: placed.id, origin });
    else sorted.entries[placed.kind].push({ id: placed.id, origin });
  }
  return sorted;
}

function pictureFile({ path, bytes, sizeBytes }: SourceFile, name: string): PictureFile {
  return { path, name, found: pictureKind(bytes), sizeBytes: sizeBytes ?? bytes.length };
}

/** By path, those with a wrong name last: of two files of one name the good one counts. */
function inOrder(files: readonly SourceFile[], root: string) {
  const placed = files.map((file) => ({ file, placed: placeFile(root, file.path.slice(root.length + 1)) }));
  const isWrong = (one: (typeof placed)[number]) => (one.placed.kind === 'fault' ? 1 : 0);
  return placed.toSorted((a, b) => isWrong(a) - isWrong(b) || (a.file.path < b.file.path ? -1 : 1));
}

/** A file without text still has its id, so that nothing that names it is called unknown. */
function unreadable(path: string, fault: ContentFault): Origin {
  return {
    source: { path, text: '' },
    yamlAt: 0,
    yaml: '',
    document: null,
    raw: undefined,
    body: '',
    faults: [fault],
  };
}

function twinFault(path: string, twin: string): ContentFault {
  return faultOfFile(path, {
    code: 'duplicate-file',
    expected: 'names that differ in more than small and capital letters',
    received: `"${path}" besides "${twin}"`,
    hint: 'Rename one of the two, or remove it.',
  });
}

/** Which file of the content folder is what. */
import type { ContentFault } from '../fault.ts';
import { nearest } from '../nearest.ts';
import { ID_FORM } from '../schema/fields.ts';
import type { TranslatedKind } from '../translation/texts.ts';
import { PICTURE_NAME, PICTURE_NAME_SAID, PICTURES } from './pictureKind.ts';
import { faultOfFile } from './sourceText.ts';

/** The folders of the shop, with the ending of their files. */
export const FOLDERS = {
  frames: { folder: 'frames', ending: '.md' },
  outlines: { folder: 'outlines', ending: '.yaml' },
  designs: { folder: 'lenses/designs', ending: '.md' },
  materials: { folder: 'lenses/materials', ending: '.md' },
  tints: { folder: 'lenses/tints', ending: '.md' },
  coatings: { folder: 'lenses/coatings', ending: '.md' },
  promotions: { folder: 'promotions', ending: '.md' },
  pages: { folder: 'pages', ending: '.md' },
} as const;

export type FolderKind = keyof typeof FOLDERS;

/** What a path is; `path` is relative to the content folder. */
export type Placed =
  | { readonly kind: 'shop' }
  | { readonly kind: 'words'; readonly language: string }
  | {
      readonly kind: 'translation';
      readonly language: string;
      readonly of: TranslatedKind;
      readonly id: string;
    }
  | { readonly kind: FolderKind; readonly id: string }
  | { readonly kind: 'picture'; readonly name: string }
  | { readonly kind: 'ignored' }
  | { readonly kind: 'fault'; readonly fault: ContentFault };

/** Files that programs leave behind. */
const LITTER = /(?:^|\/)(?:\.[^/]*|[^/]*~|#[^/]*#|Thumbs\.db|desktop\.ini)(?:\/|$)/i;

/** Finds the place of a file; `root` is the content folder as faults name it. */
export function placeFile(root: string, path: string): Placed {
  if (LITTER.test(path)) return { kind: 'ignored' };
  if (path === 'shop.yaml') return { kind: 'shop' };
  const slash = path.lastIndexOf('/');
  const folder = path.slice(0, Math.max(0, slash));
  const name = path.slice(slash + 1);
  const language = /^words\/([^/]+)$/.exec(folder)?.[1];
  if (language !== undefined && name.endsWith('.yaml')) return { kind: 'words', language };
  if (folder === PICTURES) return placePicture(`${root}/${path}`, name);
  const translation = /^translations\/([^/]+)\/(.+)$/.exec(path);
  if (translation !== null) return placeTranslation(root, path, translation[1] ?? '', translation[2] ?? '');
  for (const [kind, known] of Object.entries(FOLDERS)) {
    if (known.folder !== folder || !name.endsWith(known.ending)) continue;
    const id = name.slice(0, -known.ending.length);
    return ID_FORM.test(id) ? { kind: kind as FolderKind, id } : badName(`${root}/${path}`, id, known.ending);
  }
  return unknownFile(root, path, folder, name);
}

function placePicture(file: string, name: string): Placed {
  if (PICTURE_NAME.test(name)) return { kind: 'picture', name };
  const dot = name.lastIndexOf('.');
  const ending = name.slice(dot + 1).toLowerCase();
  const better = dot > 0 ? `${slug(name.slice(0, dot))}.${ending}` : '';
  return {
    kind: 'fault',
    fault: faultOfFile(file, {
      code: 'bad-file-name',
      expected: PICTURE_NAME_SAID,
      received: `"${name}"`,
      hint: PICTURE_NAME.test(better)
        ? `Rename the file to ${better}.`
        : 'Save it as JPEG, PNG, WebP or AVIF, or move it out of the folder.',
    }),
  };
}

/** A translation lies in its language's folder as the file that it translates lies in the content folder. */
function placeTranslation(root: string, path: string, language: string, inner: string): Placed {
  const placed = placeFile(root, inner);
  if (placed.kind === 'shop') return { kind: 'translation', language, of: 'shop', id: 'shop' };
  if (placed.kind === 'ignored') return placed;
  if (
    placed.kind !== 'fault' &&
    'id' in placed &&
    placed.kind !== 'outlines' &&
    placed.kind !== 'translation'
  )
    return { kind: 'translation', language, of: placed.kind, id: placed.id };
  return {
    kind: 'fault',
    fault: faultOfFile(`${root}/${path}`, {
      code: 'unknown-file',
      expected: `the path of a file with texts, such as translations/${language}/frames/dunlin.md`,
      received: `"${path}"`,
      hint: 'Give it the path that the file it translates has in the content folder.',
    }),
  };
}

function badName(file: string, id: string, ending: string): Placed {
  const better = slug(id);
  return {
    kind: 'fault',
    fault: faultOfFile(file, {
      code: 'bad-file-name',
      expected: `a name of small letters a-z, digits and hyphens, then ${ending}`,
      received: `"${id}${ending}"`,
      hint: better === '' ? 'Rename the file.' : `Rename the file to ${better}${ending}.`,
    }),
  };
}

const SPELT_OUT: Readonly<Record<string, string>> = {
  ä: 'ae',
  ö: 'oe',
  ü: 'ue',
  ß: 'ss',
  æ: 'ae',
  ø: 'oe',
  å: 'aa',
};

/** The id nearest to a name: `Große Welle` gives `grosse-welle`; '' where nothing is left. */
export function slug(name: string): string {
  return name
    .normalize('NFC')
    .toLowerCase()
    .replace(/[äöüßæøå]/g, (letter) => SPELT_OUT[letter] ?? letter)
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
}

function unknownFile(root: string, path: string, folder: string, name: string): Placed {
  const folders = [...Object.values(FOLDERS).map((known) => known.folder), PICTURES, 'words/en'];
  const known = Object.values(FOLDERS).find((candidate) => candidate.folder === folder);
  const meant = nearest(folder, folders);
  const hint =
    known !== undefined || folder.startsWith('words/')
      ? `Rename it so that it ends with ${known?.ending ?? '.yaml'}, or move it out of the folder.`
      : folder === '' && nearest(name, ['shop.yaml']) !== null
        ? 'Rename it to shop.yaml.'
        : meant !== null
          ? `Did you mean the folder ${root}/${meant}?`
          : 'Move it out of the content folder.';
  return {
    kind: 'fault',
    fault: faultOfFile(`${root}/${path}`, {
      code: 'unknown-file',
      expected: `shop.yaml, or a file in ${folders.map((one) => (one === 'words/en' ? 'words/<language>' : one)).join(', ')}`,
      received: `"${path}"`,
      hint,
    }),
  };
}

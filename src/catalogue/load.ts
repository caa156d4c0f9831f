/** Reads a content folder from the disk. With the commands, the only file that touches it. */
import { closeSync, type Dirent, openSync, readdirSync, readFileSync, readSync, statSync } from 'node:fs';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import type { ContentFault } from './fault.ts';
import { compareFaults } from './fault.ts';
import { readCatalogue } from './readCatalogue.ts';
import { isPicturePath, PICTURE_HEAD_BYTES } from './reading/pictureKind.ts';
import { faultOfFile, MOST_BYTES, type SourceFile } from './reading/sourceText.ts';
import type { Reading } from './shopReading.ts';

interface Found {
  readonly files: SourceFile[];
  readonly faults: ContentFault[];
}

/** A file too large is not read whole: one byte more than allowed is enough to refuse it. */
function readBytes(path: string): Uint8Array {
  if (statSync(path).size <= MOST_BYTES) return readFileSync(path);
  const bytes = new Uint8Array(MOST_BYTES + 1);
  const file = openSync(path, 'r');
  try {
    return bytes.subarray(0, readSync(file, bytes));
  } finally {
    closeSync(file);
  }
}

/** Of a picture only the beginning: what it is shows there, and a shop may have thousands. */
function readFile(path: string, name: string): SourceFile {
  if (!isPicturePath(name)) return { path: name, bytes: readBytes(path) };
  const bytes = new Uint8Array(PICTURE_HEAD_BYTES);
  const file = openSync(path, 'r');
  try {
    return { path: name, bytes: bytes.subarray(0, readSync(file, bytes)), sizeBytes: statSync(path).size };
  } finally {
    closeSync(file);
  }
}

function unreadable(name: string, error: unknown): ContentFault {
  const reason = error instanceof Error && 'code' in error ? String(error.code) : 'unknown reason';
  return faultOfFile(name, {
    code: 'unreadable',
    expected: 'a file or folder that this program may read',
    received: reason === 'ENOENT' ? 'nothing is there' : `the system says ${reason}`,
    hint: reason === 'ENOENT' ? 'Check the path, or mend the link.' : 'Check who may read it.',
  });
}

function walk(folder: string, name: string, found: Found, depth: number): void {
  let entries: Dirent[];
  try {
    entries = readdirSync(folder, { withFileTypes: true });
  } catch (error) {
    found.faults.push(unreadable(name, error));
    return;
  }
  for (const entry of entries) {
    if (entry.name.startsWith('.')) continue;
    const path = join(folder, entry.name);
    // Links are followed; a circle of them ends at the depth that no content folder has.
    const inner = `${name}/${entry.name}`;
    try {
      const isFolder = entry.isDirectory() || (entry.isSymbolicLink() && statSync(path).isDirectory());
      if (isFolder && depth < 6) walk(path, inner, found, depth + 1);
      else if (!isFolder) found.files.push(readFile(path, inner));
    } catch (error) {
      found.faults.push(unreadable(inner, error));
    }
  }
}

/** How faults name the folder: as seen from the working directory where it lies inside it. */
function nameOf(folder: string): string {
  const inside = relative(process.cwd(), folder);
  if (inside === '' || inside.startsWith('..')) return basename(folder) || dirname(folder);
  return inside.split(sep).join('/');
}

/** The files of a content folder. */
export interface ContentFolder extends Found {
  /** How faults name the folder. */
  readonly name: string;
}

/** The files of the content folder `root`, and those that cannot be read. Never throws for what the folder holds. */
export function loadFolder(root: string): ContentFolder {
  const folder = resolve(root);
  const name = nameOf(folder);
  const found: Found = { files: [], faults: [] };
  walk(folder, name, found, 0);
  return { name, ...found };
}

/** The shop of a folder's files, or every fault of it. */
export function readFolder({ name, files, faults }: ContentFolder): Reading {
  if (files.length === 0 && faults.length > 0) return { ok: false, faults };
  const reading = readCatalogue(files, name);
  if (faults.length === 0) return reading;
  return { ok: false, faults: [...faults, ...(reading.ok ? [] : reading.faults)].toSorted(compareFaults) };
}

/** The shop of the content folder `root`, or every fault of it. Never throws for what the folder holds. */
export function loadCatalogue(root: string): Reading {
  return readFolder(loadFolder(root));
}

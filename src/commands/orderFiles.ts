/** The files of a folder that may hold orders, each read with a limit: a hostile folder may hold anything. */
import { closeSync, constants, fstatSync, openSync, readdirSync, readSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { MOST_FILE_BYTES, sizeRefusal } from '../order/plainBytes.ts';
import { type Refusal, refusal } from '../order/refusal.ts';

export interface OrderFolder {
  readonly folder: string;
  /** Names of files in it, in order; folders and hidden files are left out. */
  readonly names: readonly string[];
}

/** The files of a folder, or the one file that is named. Throws what the system says where it cannot be read. */
export function orderFiles(path: string): OrderFolder {
  if (!statSync(path).isDirectory()) return { folder: dirname(path), names: [basename(path)] };
  const entries = readdirSync(path, { withFileTypes: true });
  const names = entries
    .filter((entry) => !entry.isDirectory() && !entry.name.startsWith('.'))
    .map(({ name }) => name);
  return { folder: path, names: names.sort() };
}

/** The bytes of one of them, or why it is not read. */
export function readOrderFile({ folder }: OrderFolder, name: string): Uint8Array | Refusal {
  let file: number | null = null;
  try {
    // A pipe would wait for its other end for ever; on Windows there is no such flag, nor such a file in a folder.
    file = openSync(join(folder, name), constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
    const found = fstatSync(file);
    if (!found.isFile()) return refusal('no-file');
    const wrong = sizeRefusal(found.size);
    return wrong ?? readAll(file, found.size);
  } catch (error) {
    const reason = error instanceof Error && 'code' in error ? String(error.code) : String(error);
    return refusal('unreadable', { reason });
  } finally {
    if (file !== null) closeSync(file);
  }
}

/** The first `size` bytes, and no more than an order may have, however the file grows meanwhile. */
function readAll(file: number, size: number): Uint8Array {
  const bytes = new Uint8Array(Math.min(size, MOST_FILE_BYTES));
  let filled = 0;
  while (filled < bytes.length) {
    const count = readSync(file, bytes, filled, bytes.length - filled, filled);
    if (count === 0) break;
    filled += count;
  }
  return bytes.subarray(0, filled);
}

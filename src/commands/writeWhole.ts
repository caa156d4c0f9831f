/** Files that are there whole or not at all: written beside their place, then moved into it. */
import { randomBytes } from 'node:crypto';
import { closeSync, fsyncSync, openSync, renameSync, rmSync, writeFileSync } from 'node:fs';

/** Readable and writable by their owner alone. */
export const PRIVATE = 0o600;

/** Writes a file whole, over the one that is there. Throws what the system says where it cannot be written. */
export function writeWhole(path: string, content: string | Uint8Array, mode: number): void {
  const beside = `${path}.${randomBytes(6).toString('hex')}.part`;
  writeNew(beside, content, mode);
  try {
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}

/** Writes a file that is not there yet; throws EEXIST where it is, and leaves nothing half written. */
export function writeNew(path: string, content: string | Uint8Array, mode: number): void {
  const file = openSync(path, 'wx', mode);
  try {
    writeFileSync(file, content);
    fsyncSync(file);
  } catch (error) {
    rmSync(path, { force: true });
    throw error;
  } finally {
    closeSync(file);
  }
}

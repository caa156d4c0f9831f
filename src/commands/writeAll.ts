/** Several files at once: all of them, or none. */

import { randomBytes } from 'node:crypto';
import { mkdirSync, readFileSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { writeNew, writeWhole } from './writeWhole.ts';

/** A file with its new text. */
export interface Change {
  readonly path: string;
  readonly text: string;
  /** Whether the file must not be there yet. */
  readonly fresh: boolean;
}

interface Staged extends Change {
  readonly beside: string;
  /** What stood there, to be put back. */
  readonly before: Buffer | null;
  readonly mode: number;
}

/** Writes every file beside its place first, then moves them in; where one cannot be, all is as it was and it throws. */
export function writeAll(changes: readonly Change[]): void {
  const staged: Staged[] = [];
  const moved: Staged[] = [];
  try {
    for (const change of changes) staged.push(stage(change));
    for (const one of staged) {
      renameSync(one.beside, one.path);
      moved.push(one);
    }
  } catch (error) {
    for (const { path, before, mode } of moved)
      if (before === null) rmSync(path, { force: true });
      else writeWhole(path, before, mode);
    for (const { beside } of staged) rmSync(beside, { force: true });
    throw error;
  }
}

function stage(change: Change): Staged {
  const { path, text, fresh } = change;
  mkdirSync(dirname(path), { recursive: true });
  const found = statSync(path, { throwIfNoEntry: false });
  if (fresh && found !== undefined) throw new Error(`${path} is there already.`);
  const mode = found === undefined ? 0o644 : found.mode & 0o777;
  const before = found === undefined ? null : readFileSync(path);
  const beside = `${path}.${randomBytes(6).toString('hex')}.part`;
  writeNew(beside, text, mode);
  return { ...change, beside, before, mode };
}

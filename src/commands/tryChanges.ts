/** Whether a shop stays without new faults when some of its files are changed: nothing is written to find out. */
import { relative, resolve, sep } from 'node:path';
import type { ContentFault } from '../catalogue/fault.ts';
import { type ContentFolder, readFolder } from '../catalogue/load.ts';
import type { Change } from './writeAll.ts';

export interface Tried {
  /** Faults that the changes bring. */
  readonly faults: readonly ContentFault[];
  /** How many the shop had before. */
  readonly before: number;
}

const keyOf = ({ file, code, path, received }: ContentFault) => JSON.stringify([file, code, path, received]);

/** Reads the shop as it is and as it would be; `root` is where `folder` was read from. */
export function tryChanges(folder: ContentFolder, root: string, changes: readonly Change[]): Tried {
  const now = readFolder(folder);
  const known = new Set(now.ok ? [] : now.faults.map(keyOf));
  const then = readFolder({ ...folder, files: withChanges(folder, root, changes) });
  return {
    faults: then.ok ? [] : then.faults.filter((fault) => !known.has(keyOf(fault))),
    before: known.size,
  };
}

function withChanges({ name, files }: ContentFolder, root: string, changes: readonly Change[]) {
  const encoder = new TextEncoder();
  const put = changes.flatMap(({ path, text }) => {
    const inside = relative(resolve(root), resolve(path)).split(sep).join('/');
    // What lies beside the content folder is no part of the shop.
    return inside.startsWith('../') ? [] : [{ path: `${name}/${inside}`, bytes: encoder.encode(text) }];
  });
  const names = new Set(put.map(({ path }) => path));
  return [...files.filter(({ path }) => !names.has(path)), ...put];
}

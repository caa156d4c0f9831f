/** What an import would do to the content folder, and the files that it starts from. */
import { join } from 'node:path';
import type { ContentFault } from '../../catalogue/fault.ts';
import type { ContentFolder } from '../../catalogue/load.ts';
import type { Change } from '../writeAll.ts';

/** A change with the text that was there; null where there was no file. */
export interface Step extends Change {
  readonly before: string | null;
}

/** What would be written, or all that is wrong. */
export type Plan =
  | {
      readonly ok: true;
      readonly steps: readonly Step[];
      readonly note: string;
      /** A fault that the shop would then have, at the place that it comes from. */
      readonly explain?: (fault: ContentFault) => ContentFault;
    }
  | { readonly ok: false; readonly faults: readonly ContentFault[] };

/** The content folder with its place on the disk. */
export interface Shelf {
  readonly root: string;
  readonly folder: ContentFolder;
}

/** Where a file of the folder lies on the disk; `path` is as faults name it. */
export function placeOf({ root, folder }: Shelf, path: string): string {
  return join(root, path.slice(folder.name.length + 1));
}

/** The text of a file with its byte-order mark and line ends. */
export function exactText({ folder }: Shelf, path: string): string {
  const file = folder.files.find((one) => one.path === path);
  return new TextDecoder('utf-8', { ignoreBOM: true }).decode(file?.bytes);
}

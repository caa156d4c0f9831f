/** One file of the folder: read, compared, its papers written, and told in lines for the terminal. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { readOrder } from '../order/readOrder.ts';
import { type Refusal, refusalText } from '../order/refusal.ts';
import { type NamedFile, openedOrder } from './openedOrder.ts';
import { PRIVATE, writeNew, writeWhole } from './writeWhole.ts';

/** What every file is opened with. */
export interface Bench {
  readonly catalogue: Catalogue;
  /** Of the shop as it is now. */
  readonly version: string;
  readonly identities: readonly string[];
  /** Folder of the papers. */
  readonly out: string;
  /** Whether papers that are there may be written over. */
  readonly replace: boolean;
  /** Orders opened so far, by number. */
  readonly seen: Map<string, { readonly digest: string; readonly name: string }>;
}

export interface Outcome {
  /** `look`: opened, and not as the buyer saw it, not makeable, or in the way of another. `same`: opened before. */
  readonly kind: 'fine' | 'look' | 'same' | 'refused';
  readonly lines: readonly string[];
}

/** A name as one line of plain letters: a file may be called anything. */
export const shownName = (name: string): string => name.replace(/\p{C}/gu, '?');

/** Opens the file of a name; `bytes` are what is in it, or why it was not read. */
export async function openOrder(bench: Bench, name: string, bytes: Uint8Array | Refusal): Promise<Outcome> {
  const { catalogue, identities, seen } = bench;
  const read =
    'code' in bytes ? { ok: false as const, refusals: [bytes] } : await readOrder(bytes, { identities });
  if (!read.ok)
    return {
      kind: 'refused',
      lines: read.refusals.map((each) => `refused: ${refusalText(catalogue.words, each)}`),
    };
  const { number } = read.order;
  const before = seen.get(number);
  if (before?.digest === read.digest)
    return { kind: 'same', lines: [`the same order as ${shownName(before.name)}`] };
  if (before === undefined) seen.set(number, { digest: read.digest, name });
  const base = before === undefined ? number : `${number}-${read.digest.slice(0, 8)}`;
  const order = openedOrder(read, catalogue, base, bench.version);
  const unwritten = writeFiles(bench, order.files);
  const twice =
    before === undefined
      ? []
      : [
          `${shownName(before.name)} has the same number. The slip of the order in this file says ${read.digest}.`,
        ];
  const fine = order.makeable && order.differences.length + unwritten.length + twice.length === 0;
  return {
    kind: fine ? 'fine' : 'look',
    lines: [
      order.headline,
      ...section('not as the buyer saw it:', order.differences),
      ...section('before anything is made:', [...twice, ...order.asks]),
      ...section('not written:', unwritten),
    ],
  };
}

const section = (title: string, lines: readonly string[]) =>
  lines.length === 0 ? [] : [title, ...lines.map((line) => `  - ${line}`)];

/** Writes the files of an order; gives what stood in the way of each. Nothing is written over without being asked. */
function writeFiles({ out, replace }: Bench, files: readonly NamedFile[]): readonly string[] {
  return files.flatMap(({ name, content }) => {
    const path = join(out, name);
    try {
      if (replace) writeWhole(path, content, PRIVATE);
      else writeNew(path, content, PRIVATE);
      return [];
    } catch (error) {
      return whyNot(path, content, error);
    }
  });
}

function whyNot(path: string, content: string | Uint8Array, error: unknown): readonly string[] {
  const reason = error instanceof Error ? error.message : String(error);
  if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) return [reason];
  try {
    if (Buffer.from(content).equals(readFileSync(path))) return [];
  } catch {
    return [reason];
  }
  return [`${path} is there and differs. It was left alone; --replace writes over it.`];
}

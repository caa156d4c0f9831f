/**
 * The browser's database of the workroom: sealed files as they came, and progress, both by order number alone. Never a
 * key, never an opened order. Nothing is in it until the owner wants it.
 */
import { clear, createStore, delMany, entries, keys, setMany, type UseStore, update } from 'idb-keyval';
import { laterRecord, type Progress } from '../../workroom/inHand.ts';

export interface KeptFile {
  /** 12 digits; with a piece of the digest where two orders share one. */
  readonly id: string;
  /** As it came, still sealed. */
  readonly bytes: Uint8Array;
}

export interface Kept {
  readonly files: readonly KeptFile[];
  readonly progress: readonly Progress[];
  /** What was typed for an order, sealed, by the order's id. */
  readonly notes: readonly KeptFile[];
}

export interface Shelf {
  readonly isWanted: () => boolean;
  readonly read: () => Promise<Kept>;
  readonly put: (kept: Kept) => Promise<void>;
  /** Takes away what belongs to an order number. */
  readonly drop: (number: string) => Promise<void>;
  /** Takes away everything, and the mark that it is wanted. */
  readonly destroy: () => Promise<void>;
}

const NAME = 'bevelbook-workroom';
const WANTED = `${NAME}.keep`;
const FILE = 'file/';
const JOB = 'job/';
const NOTES = 'notes/';

let opened: UseStore | null = null;
/** Opened at first use: a page that keeps nothing makes no database. */
const store = (): UseStore => {
  opened ??= createStore(NAME, 'kept');
  return opened;
};

async function readAll(): Promise<Kept> {
  const all = await entries<string, unknown>(store());
  const under = <T>(start: string) =>
    all
      .filter(([key]) => key.startsWith(start))
      .map(([key, value]) => [key.slice(start.length), value as T] as const);
  return {
    files: under<Uint8Array>(FILE).map(([id, bytes]) => ({ id, bytes })),
    progress: under<Progress>(JOB).map(([, job]) => job),
    notes: under<Uint8Array>(NOTES).map(([id, bytes]) => ({ id, bytes })),
  };
}

const isWanted = (): boolean => {
  try {
    return localStorage.getItem(WANTED) === 'yes';
  } catch {
    return false;
  }
};

/** The shelf of this browser. Its promises fail with what the browser says, such as a full disk. */
export const deviceShelf: Shelf = {
  isWanted,
  read: async () => (isWanted() ? readAll() : { files: [], progress: [], notes: [] }),
  put: async ({ files, progress, notes }) => {
    localStorage.setItem(WANTED, 'yes');
    const under = (start: string, all: readonly KeptFile[]) =>
      all.map(({ id, bytes }): [string, Uint8Array] => [start + id, bytes]);
    await setMany([...under(FILE, files), ...under(NOTES, notes)], store());
    // Another tab may have noted more meanwhile.
    const later = progress.map((job) =>
      update<Progress>(
        JOB + job.number,
        (known) => (known === undefined ? job : laterRecord(known, job)),
        store(),
      ),
    );
    await Promise.all(later);
  },
  drop: async (number) => {
    const all = await keys<string>(store());
    // Ids of orders that share a number have more behind it.
    const own = all.filter((key) => [JOB, FILE, NOTES].some((start) => key.startsWith(start + number)));
    await delMany(own, store());
  },
  destroy: async () => {
    if (isWanted()) await clear(store());
    localStorage.removeItem(WANTED);
  },
};

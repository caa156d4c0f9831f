/**
 * The browser's database of the workroom: sealed files as they came, and progress, both by order number alone. Never a
 * key, never an opened order. It is not there until the owner wants it.
 */
import type { Progress } from '../../workroom/inHand.ts';

export interface KeptFile {
  /** 12 digits; with a piece of the digest where two orders share one. */
  readonly id: string;
  /** As it came, still sealed. */
  readonly bytes: Uint8Array;
}

export interface Kept {
  readonly files: readonly KeptFile[];
  readonly progress: readonly Progress[];
}

export interface Shelf {
  readonly isWanted: () => boolean;
  readonly read: () => Promise<Kept>;
  /** Puts all of it in one step: all is kept, or nothing of it is. */
  readonly put: (kept: Partial<Kept>) => Promise<void>;
  /** Takes away what belongs to an order number. */
  readonly drop: (number: string) => Promise<void>;
  /** Deletes the database and the mark that it is wanted. */
  readonly destroy: () => Promise<void>;
}

const NAME = 'bevelbook-workroom';
const WANTED = `${NAME}.keep`;
const STORES = ['files', 'progress'] as const;

const answer = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((done, fail) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => fail(request.error);
  });

function open(): Promise<IDBDatabase> {
  const request = indexedDB.open(NAME, 1);
  request.onupgradeneeded = () => {
    request.result.createObjectStore('files', { keyPath: 'id' });
    request.result.createObjectStore('progress', { keyPath: 'number' });
  };
  return answer(request);
}

/** Runs a change and waits until the disk has it. */
async function change(act: (files: IDBObjectStore, progress: IDBObjectStore) => void): Promise<void> {
  const database = await open();
  try {
    const step = database.transaction(STORES, 'readwrite');
    act(step.objectStore('files'), step.objectStore('progress'));
    await new Promise<void>((done, fail) => {
      step.oncomplete = () => done();
      step.onabort = () => fail(step.error);
    });
  } finally {
    database.close();
  }
}

async function readAll(): Promise<Kept> {
  const database = await open();
  try {
    const step = database.transaction(STORES);
    const [files, progress] = await Promise.all([
      answer<KeptFile[]>(step.objectStore('files').getAll()),
      answer<Progress[]>(step.objectStore('progress').getAll()),
    ]);
    return { files, progress };
  } finally {
    database.close();
  }
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
  read: async () => (isWanted() ? readAll() : { files: [], progress: [] }),
  put: async ({ files = [], progress = [] }) => {
    localStorage.setItem(WANTED, 'yes');
    await change((ofFiles, ofProgress) => {
      for (const file of files) ofFiles.put(file);
      for (const job of progress) ofProgress.put(job);
    });
  },
  drop: (number) =>
    change((files, progress) => {
      // All ids that begin with the number: those of orders that share it have more behind.
      files.delete(IDBKeyRange.bound(number, `${number}\uffff`));
      progress.delete(number);
    }),
  destroy: async () => {
    await answer(indexedDB.deleteDatabase(NAME));
    localStorage.removeItem(WANTED);
  },
};

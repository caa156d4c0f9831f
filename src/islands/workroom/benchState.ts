/**
 * What the workroom's page holds. Orders, names, keys and measurements live in memory alone; only sealed files and
 * progress by number go to the shelf, and only where the owner wants it.
 */
import { atom } from 'nanostores';
import type { Slots } from '../../catalogue/words.ts';
import type { Progress } from '../../workroom/inHand.ts';
import type { WorkroomOffer } from '../../workroom/openJob.ts';
import type { Held } from './held.ts';
import type { Orders } from './orders.ts';
import type { KeptFile, Shelf } from './shelf.ts';

/** What became of a file. */
export interface Told {
  readonly name: string;
  readonly kind: 'opened' | 'same' | 'waits' | 'refused';
  readonly lines: readonly string[];
}

export interface BenchParts {
  readonly offer: WorkroomOffer;
  readonly orders: Orders;
  /** Of the shop as it is now. */
  readonly version: string;
  /** Civil date at the shop. */
  readonly today: () => string;
  readonly shelf: Shelf;
  /** The sentence below `workroomPage`. */
  readonly t: (key: string, slots?: Slots) => string;
}

/** A sealed file that waits for its key. Its id is empty until it was opened once: the number is inside. */
export interface Waiting extends KeptFile {
  readonly name: string;
}

/** Texts by field, as typed; a tick is `yes`. */
export type Draft = Readonly<Record<string, string>>;

/** The page's stores, all empty but for whether the shelf is wanted. */
export function benchState(shelf: Pick<Shelf, 'isWanted'>) {
  return {
    held: atom<readonly Held[]>([]),
    waiting: atom<readonly Waiting[]>([]),
    progress: atom<readonly Progress[]>([]),
    keys: atom<readonly string[]>([]),
    told: atom<readonly Told[]>([]),
    /** Whether sealed files and progress go to the shelf. */
    keeping: atom(shelf.isWanted()),
    /** Why the shelf failed; empty: it did not. */
    failed: atom(''),
    /** How the last import went. */
    imported: atom(''),
    /** Who works at this bench. */
    by: atom(''),
    busy: atom(false),
    /** Id of the open order. */
    chosen: atom<string | null>(null),
    /** By order id, all that was typed for its inspection and papers. */
    drafts: atom<Readonly<Record<string, Draft>>>({}),
    /** What was typed for orders, sealed, by the order's id. */
    notes: atom<ReadonlyMap<string, Uint8Array>>(new Map()),
    /** What just happened, for those who hear the page. */
    said: atom(''),
  };
}

export type BenchState = ReturnType<typeof benchState>;

/** A reason to tell from whatever was thrown. */
export const reasonOf = (error: unknown): string =>
  error instanceof Error && error.message !== '' ? error.message : String(error);

/** What was typed, ticked and attached, the number of the order, and whether it is kept in the tab. */
import { atom, map } from 'nanostores';
import { drop, hold, look, type Shelves } from '../keeping/holding.ts';
import { type ChosenFile, type NotAttached, readChosen } from './attaching.ts';
import type { Files } from './draftOf.ts';
import { type Gone, ORDER } from './keptOrder.ts';
import type { OrderParts } from './orderParts.ts';

export interface FormSource {
  readonly shelves: Shelves;
  readonly parts: OrderParts;
  /** So many random bytes. */
  readonly random: (count: number) => Uint8Array;
}

/** The stores of the form; what was kept and cannot be read is dropped, and `damaged` says so. */
export function createForm({ shelves, parts, random }: FormSource) {
  const draw = () => parts.orderNumber(random(parts.NUMBER_BYTES));
  const first = look(shelves, ORDER);
  const was = first.value !== null && parts.isOrderNumber(first.value.number) ? first.value : null;
  const damaged = first.damaged || (first.value !== null && was === null);
  if (damaged) drop(shelves, ORDER);
  const typed = map<Record<string, string>>({ ...was?.typed });
  const files = atom<Files>({});
  const notTaken = atom<Readonly<Record<number, readonly NotAttached[]>>>({});
  const number = atom(was?.number ?? draw());
  const gone = atom<Gone | null>(was?.gone ?? null);
  const kept = atom(was !== null);
  const refused = atom(false);
  const holdNow = () => {
    if (!kept.get()) return;
    const now = { number: number.get(), typed: typed.get(), gone: gone.get() };
    refused.set(!hold(shelves, ORDER, now, false));
  };
  const empty = () => {
    typed.set({});
    files.set({});
    notTaken.set({});
    gone.set(null);
    number.set(draw());
  };
  return {
    typed,
    files,
    /** By pair, what was not taken of the last choice. */
    notTaken,
    number,
    /** The last that left the page; null: nothing has. */
    gone,
    kept,
    /** The browser keeps nothing. */
    refused,
    damaged,
    enter: (field: string, text: string) => {
      typed.setKey(field, text);
      holdNow();
    },
    attach: async (id: number, chosen: readonly ChosenFile[]) => {
      const not: NotAttached[] = [];
      for (const one of chosen) {
        const read = await readChosen(parts, files.get(), id, one);
        if (typeof read === 'string') not.push({ name: one.name, code: read });
        else files.set({ ...files.get(), [id]: [...(files.get()[id] ?? []), read] });
      }
      notTaken.set({ ...notTaken.get(), [id]: not });
    },
    detach: (id: number, index: number) => {
      const others = (files.get()[id] ?? []).filter((_, at) => at !== index);
      files.set({ ...files.get(), [id]: others });
    },
    leave: (what: Gone) => {
      gone.set(what);
      holdNow();
    },
    keep: (on: boolean) => {
      kept.set(on);
      if (on) holdNow();
      else refused.set(!drop(shelves, ORDER));
    },
    /** Another order: a new number, and nothing typed. */
    startAnew: () => {
      empty();
      holdNow();
    },
    /** Empties it without holding anything: what was held is forgotten elsewhere. */
    clear: () => {
      kept.set(false);
      empty();
    },
  };
}

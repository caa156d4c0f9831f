/**
 * What was typed for an order, kept beside its sealed file and sealed to the same key: measurements are health data.
 * Without a key, or for an order that came unsealed, it stays as it is in memory alone.
 */
import type { BenchParts, BenchState, Draft } from './benchState.ts';
import type { KeepWork } from './keepWork.ts';

const MOST_FIELDS = 3000;
const MOST_LETTERS = 400;

/** Typing pauses so long before it is sealed, ms. */
const PAUSE_MS = 700;

/** The notes that a text holds; null where it is not as this page writes it. */
export function readNotes(text: string): Draft | null {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return null;
  }
  if (typeof json !== 'object' || json === null || Array.isArray(json)) return null;
  const entries = Object.entries(json);
  const isFine = ([field, value]: [string, unknown]) =>
    /^[\w.-]{1,80}$/.test(field) && typeof value === 'string' && value.length <= MOST_LETTERS;
  return entries.length <= MOST_FIELDS && entries.every(isFine) ? Object.fromEntries(entries) : null;
}

export type KeepNotes = ReturnType<typeof keepNotes>;

/** What seals notes and opens them. */
export function keepNotes(
  { orders }: Pick<BenchParts, 'orders'>,
  state: BenchState,
  { keepNote }: Pick<KeepWork, 'keepNote'>,
) {
  const { held, drafts, keys, progress, notes } = state;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const changed = new Set<string>();

  /** Seals what changed; it goes to the shelf where that is wanted. */
  async function sealNotes(): Promise<void> {
    clearTimeout(timer);
    const due = [...changed].flatMap((id) => {
      const typed = drafts.get()[id];
      const isSealed = held.get().some((one) => one.id === id && one.sealedBytes !== null);
      return typed !== undefined && isSealed ? [{ id, text: JSON.stringify(typed) }] : [];
    });
    const owned = keys.get();
    if (owned.length === 0 || due.length === 0) return;
    changed.clear();
    const recipients = await Promise.all(owned.map(orders.recipientOf));
    for (const { id, text } of due) {
      const bytes = await orders.seal(new TextEncoder().encode(text), recipients);
      // The order may have been deleted meanwhile.
      if (progress.get().some(({ number }) => id.startsWith(number))) await keepNote({ id, bytes });
    }
  }

  /** Puts down what was typed for an order. */
  function enter(id: string, field: string, text: string): void {
    write(id, { ...drafts.get()[id], [field]: text.slice(0, MOST_LETTERS) });
  }

  /** Puts down all that is typed for an order. */
  function write(id: string, draft: Draft): void {
    drafts.set({ ...drafts.get(), [id]: draft });
    changed.add(id);
    clearTimeout(timer);
    timer = setTimeout(() => void sealNotes(), PAUSE_MS);
  }

  /** Opens the notes of an order that has just been opened, where there are any. */
  async function openNotes(id: string): Promise<void> {
    const bytes = notes.get().get(id);
    if (bytes === undefined || drafts.get()[id] !== undefined) return;
    const plain = await orders.unseal(bytes, keys.get());
    const found = typeof plain === 'string' ? null : readNotes(new TextDecoder().decode(plain));
    // What was typed while they were opened is newer.
    if (found !== null) drafts.set({ ...drafts.get(), [id]: { ...found, ...drafts.get()[id] } });
  }

  return { enter, write, sealNotes, openNotes };
}

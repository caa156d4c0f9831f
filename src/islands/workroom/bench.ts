/** The workroom's page without its looks: what it holds, and all that can be done with it. */
import { computed } from 'nanostores';
import { type Slots, say } from '../../catalogue/words.ts';
import { formatMoney } from '../../money/format.ts';
import { type BenchParts, benchState } from './benchState.ts';
import { lookingAt } from './held.ts';
import { keepNotes } from './keepNotes.ts';
import { keepWork } from './keepWork.ts';
import { openOrders } from './openOrders.ts';

export type Bench = ReturnType<typeof createBench>;

/** A bench with nothing on it. */
export function createBench(parts: BenchParts) {
  const state = benchState(parts.shelf);
  const { held, waiting, keys, chosen, drafts, told, said } = state;
  const keeper = keepWork(parts, state);
  const noter = keepNotes(parts, state, keeper);
  const opener = openOrders(parts, state, { ...keeper, ...noter });

  /** Forgets keys, open orders and everything typed; a sealed file waits for its key again. */
  function lock(): void {
    // What was typed last is sealed with the key that is there now.
    void noter.sealNotes();
    keys.set([]);
    chosen.set(null);
    const sealed = held
      .get()
      .flatMap(({ id, shown, sealedBytes }) =>
        sealedBytes === null ? [] : [{ id, name: shown, bytes: sealedBytes }],
      );
    waiting.set([...waiting.get(), ...sealed]);
    held.set([]);
    drafts.set({});
    told.set([]);
    said.set(parts.t('key.locked'));
  }

  /** Deletes all that is kept and all that is open. */
  async function wipe(): Promise<void> {
    await keeper.setKeeping(false);
    if (state.failed.get() !== '') return;
    drafts.set({});
    lock();
    waiting.set([]);
    state.progress.set([]);
    state.notes.set(new Map());
    state.imported.set('');
    said.set(parts.t('keep.wiped'));
  }

  async function importBundle(file: Blob): Promise<void> {
    await keeper.importBundle(file);
    if (keys.get().length > 0) await opener.openWaiting();
  }

  const { currency, currencyDigits, language } = parts.offer.shop;
  const dates = new Intl.DateTimeFormat(language, { dateStyle: 'medium', timeZone: 'UTC' });

  return {
    ...parts,
    ...state,
    ...keeper,
    ...opener,
    ...noter,
    exported: async () => {
      await noter.sealNotes();
      return keeper.exported();
    },
    ...{ lock, wipe, importBundle, lookAt: lookingAt(parts.offer) },
    /** The sentence below `workroom`: what the papers say. */
    w: (key: string, slots?: Slots) => say(parts.offer.words, `workroom.${key}`, slots),
    money: (minor: number) => formatMoney(minor, currency, currencyDigits, language),
    /** A civil date as the shop's language writes it. */
    day: (civilDate: string) => dates.format(new Date(`${civilDate}T00:00:00Z`)),
    /** Files that were never opened and wait for a key, given up. */
    dropWaiting: () => waiting.set(waiting.get().filter(({ id }) => id !== '')),
    names: computed(held, (all) => {
      const names = new Map<string, readonly string[]>();
      for (const one of all) names.set(one.job.number, [...(names.get(one.job.number) ?? []), ...one.names]);
      return names;
    }),
  };
}

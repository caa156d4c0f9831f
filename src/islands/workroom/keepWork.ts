/** Keeping work: on the browser's shelf by choice, and as one file to carry away and bring back. */
import { laterRecord, type Progress } from '../../workroom/inHand.ts';
import { showNumber } from '../../workroom/job.ts';
import { type BenchParts, type BenchState, reasonOf } from './benchState.ts';
import { readBundle, writeBundle } from './bundle.ts';
import type { Kept, KeptFile } from './shelf.ts';

export type KeepWork = ReturnType<typeof keepWork>;

/** What keeps and gives back. */
export function keepWork(parts: BenchParts, state: BenchState) {
  const { orders, shelf, t } = parts;
  const { held, waiting, progress, notes, keeping, failed, chosen, said } = state;

  /** Runs what touches the shelf; where it fails, it is said and all in memory stays. */
  async function shelved(act: () => Promise<void>): Promise<boolean> {
    try {
      await act();
      failed.set('');
      return true;
    } catch (error) {
      failed.set(t('keep.failed', { reason: reasonOf(error) }));
      return false;
    }
  }

  async function keep(files: readonly KeptFile[], jobs: readonly Progress[]): Promise<void> {
    if (!keeping.get() || files.length + jobs.length === 0) return;
    const bare = files.map(({ id, bytes }) => ({ id, bytes }));
    await shelved(() => shelf.put({ files: bare, progress: jobs, notes: [] }));
  }

  /** Keeps the sealed notes of an order. */
  async function keepNote(note: KeptFile): Promise<void> {
    notes.set(new Map([...notes.get(), [note.id, note.bytes]]));
    if (keeping.get()) await shelved(() => shelf.put({ files: [], progress: [], notes: [note] }));
  }

  function take({ files, progress: jobs, notes: sealed }: Kept): void {
    notes.set(new Map([...sealed.map(({ id, bytes }) => [id, bytes] as const), ...notes.get()]));
    const here = new Set([...held.get(), ...waiting.get()].map(({ id }) => id));
    const fresh = files.filter(({ id }) => !here.has(id));
    waiting.set([...waiting.get(), ...fresh.map((file) => ({ ...file, name: showNumber(file.id) }))]);
    const records = new Map(progress.get().map((job) => [job.number, job]));
    for (const job of jobs) {
      const known = records.get(job.number);
      records.set(job.number, known === undefined ? job : laterRecord(known, job));
    }
    progress.set([...records.values()]);
  }

  const sealedHere = (): KeptFile[] => [
    ...held
      .get()
      .flatMap(({ id, sealedBytes }) => (sealedBytes === null ? [] : [{ id, bytes: sealedBytes }])),
    ...waiting.get().flatMap(({ id, bytes }) => (id === '' ? [] : [{ id, bytes }])),
  ];

  const notesHere = (): KeptFile[] => [...notes.get()].map(([id, bytes]) => ({ id, bytes }));

  /** Reads what is kept; also again, since another tab may have changed it. */
  async function recall(): Promise<void> {
    keeping.set(shelf.isWanted());
    await shelved(async () => take(await shelf.read()));
  }

  async function setKeeping(wanted: boolean): Promise<void> {
    if (wanted) {
      keeping.set(true);
      await keep(sealedHere(), progress.get());
      for (const one of notesHere()) await keepNote(one);
      if (failed.get() === '') {
        said.set(t('keep.kept'));
        return;
      }
      // What is not wholly kept is not kept at all.
      keeping.set(false);
      await shelf.destroy().catch(() => undefined);
    } else if (await shelved(shelf.destroy)) {
      keeping.set(false);
      said.set(t('keep.gone'));
    }
  }

  /** Notes where a job stands. */
  async function note(job: Progress): Promise<void> {
    progress.set(progress.get().map((one) => (one.number === job.number ? job : one)));
    await keep([], [job]);
  }

  /** Takes one order out of hand, here and on the shelf. */
  async function forget(number: string): Promise<void> {
    const isOf = ({ id }: { readonly id: string }) => id.slice(0, number.length) === number;
    if (keeping.get() && !(await shelved(() => shelf.drop(number)))) return;
    held.set(held.get().filter((one) => !isOf(one)));
    waiting.set(waiting.get().filter((one) => !isOf(one)));
    progress.set(progress.get().filter((one) => one.number !== number));
    notes.set(new Map([...notes.get()].filter(([id]) => !isOf({ id }))));
    const entries = Object.entries(state.drafts.get());
    state.drafts.set(Object.fromEntries(entries.filter(([id]) => !isOf({ id }))));
    chosen.set(null);
    said.set(t('order.gone', { number: showNumber(number) }));
  }

  /** Takes in an exported file; nothing of a file that is not whole. */
  async function importBundle(file: Blob): Promise<void> {
    const found = await readBundle(file, orders).catch(() => null);
    if (found !== null) {
      take(found);
      await keep(found.files, progress.get());
      for (const note of found.notes) await keepNote(note);
    }
    const outcome =
      found === null
        ? t('keep.notOurs')
        : t('keep.taken', { files: found.files.length, jobs: found.progress.length });
    state.imported.set(outcome);
    said.set(outcome);
  }

  const exported = (): Blob =>
    writeBundle({ files: sealedHere(), progress: progress.get(), notes: notesHere() }, orders);

  return { keep, keepNote, recall, setKeeping, note, forget, importBundle, exported };
}

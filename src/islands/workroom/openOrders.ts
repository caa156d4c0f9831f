/** Opening order files, one after the other. Each is taken for hostile; a bad one never stops the rest. */
import { receivedJob } from '../../workroom/inHand.ts';
import { type BenchParts, type BenchState, reasonOf, type Told } from './benchState.ts';
import { holdOrder } from './held.ts';
import type { KeepNotes } from './keepNotes.ts';
import type { KeepWork } from './keepWork.ts';

/** What files in memory may take together. */
const MOST_HELD_BYTES = 600_000_000;

/** A name as one line of plain letters: a file may be called anything. */
const plainName = (name: string): string => {
  const letters = Array.from(name.replace(/\p{C}/gu, '?'));
  return letters.length > 80 ? `${letters.slice(0, 79).join('')}…` : letters.join('');
};

/** Lets the page paint and answer between two files. */
const breathe = () => new Promise((done) => setTimeout(done));

/** What opens files and takes keys. */
export function openOrders(
  parts: BenchParts,
  state: BenchState,
  { keep, openNotes }: Pick<KeepWork, 'keep'> & Pick<KeepNotes, 'openNotes'>,
) {
  const { offer, orders, version, today, t } = parts;
  const { held, waiting, progress, keys, told, busy, said } = state;

  const refused = (name: string, lines: readonly string[]): Told => ({ name, kind: 'refused', lines });

  const heldBytes = () =>
    held.get().reduce((sum, one) => sum + (one.sealedBytes?.length ?? 0), 0) +
    waiting.get().reduce((sum, { bytes }) => sum + bytes.length, 0);

  async function openBytes(name: string, bytes: Uint8Array): Promise<Told> {
    const read = await orders.readOrder(bytes, { identities: keys.get() });
    if (!read.ok) {
      const lines = read.refusals.map((each) => orders.refusalText(offer.words, each));
      const waits = read.refusals.some(({ code }) => code === 'no-key' || code === 'wrong-key');
      if (waits && !waiting.get().some((one) => one.bytes === bytes))
        waiting.set([...waiting.get(), { id: '', name, bytes }]);
      return { name, kind: read.refusals.some(({ code }) => code === 'no-key') ? 'waits' : 'refused', lines };
    }
    const { order, digest, sealed } = read;
    const others = held.get().filter(({ job }) => job.number === order.number);
    if (others.some((one) => one.digest === digest)) return { name, kind: 'same', lines: [t('told.same')] };
    const id = others.length === 0 ? order.number : `${order.number}-${digest.slice(0, 8)}`;
    const now = holdOrder(read, { id, version, offer, sealedBytes: sealed ? bytes : null, t });
    held.set([...held.get(), now]);
    const known = progress.get().some(({ number }) => number === order.number);
    const fresh = known ? [] : [receivedJob(order.number, today(), '')];
    progress.set([...progress.get(), ...fresh]);
    await keep(sealed ? [{ id, bytes }] : [], fresh);
    if (sealed) await openNotes(id);
    const opened = t('told.opened', { number: now.shown, name: order.buyer.name });
    return {
      name,
      kind: 'opened',
      lines: others.length > 0 ? [opened, t('told.twice', { digest })] : [opened],
    };
  }

  async function openOne(file: File): Promise<Told> {
    const name = plainName(file.name);
    const wrong = orders.sizeRefusal(file.size);
    if (wrong !== null) return refused(name, [orders.refusalText(offer.words, wrong)]);
    if (heldBytes() + file.size > MOST_HELD_BYTES) return refused(name, [t('told.full')]);
    try {
      return await openBytes(name, new Uint8Array(await file.arrayBuffer()));
    } catch (error) {
      const unreadable = orders.refusal('unreadable', { reason: reasonOf(error) });
      return refused(name, [orders.refusalText(offer.words, unreadable)]);
    }
  }

  /** Opens each in turn and says at the end how it went. */
  async function each<T>(all: readonly T[], open: (one: T) => Promise<Told>): Promise<void> {
    if (all.length === 0 || busy.get()) return;
    busy.set(true);
    told.set([]);
    const before = held.get().length;
    for (const one of all) {
      told.set([...told.get(), await open(one)]);
      await breathe();
    }
    busy.set(false);
    const count = (kind: Told['kind']) => told.get().filter((one) => one.kind === kind).length;
    said.set(
      t('told.summary', {
        files: all.length,
        opened: count('opened'),
        same: count('same'),
        waits: count('waits'),
        refused: count('refused'),
      }),
    );
    const [first] = held.get().slice(before);
    if (first !== undefined && state.chosen.get() === null) state.chosen.set(first.id);
  }

  const openWaiting = () =>
    each(waiting.get(), async (file) => {
      const outcome = await openBytes(file.name, file.bytes);
      if (outcome.kind === 'opened' || outcome.kind === 'same')
        waiting.set(waiting.get().filter((one) => one !== file));
      return outcome;
    });

  /** Takes the private keys of a text; gives what is wrong with it. */
  async function giveKeys(text: string): Promise<string | null> {
    const read = orders.readIdentities(text);
    if (!read.ok) return t(`key.wrong.${read.code}`, { line: read.line });
    keys.set([...new Set([...keys.get(), ...read.identities])]);
    said.set(t('key.taken'));
    await openWaiting();
    return null;
  }

  return { openFiles: (files: readonly File[]) => each(files, openOne), openWaiting, giveKeys };
}

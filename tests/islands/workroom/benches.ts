/** A bench over the demonstration shop whose shelf is in memory. */
import { say } from '../../../src/catalogue/words.ts';
import { createBench } from '../../../src/islands/workroom/bench.ts';
import { loadOrders } from '../../../src/islands/workroom/orders.ts';
import type { Kept, Shelf } from '../../../src/islands/workroom/shelf.ts';
import { orderBytes } from '../../../src/order/makeOrder.ts';
import { orderNumber } from '../../../src/order/number.ts';
import type { Order } from '../../../src/order/order.ts';
import { makeKeys, seal } from '../../../src/order/seal.ts';
import { orderOf, shop } from '../../order/orders.ts';

export const orders = await loadOrders();
export const [mine, other] = await Promise.all([makeKeys(), makeKeys()]);
const version = '0'.repeat(64);
export const TODAY = '2026-11-27';

export const numberOf = (seed: number): string => orderNumber(new Uint8Array(16).fill(seed));
export const order = (seed: number, changed: Partial<Order> = {}): Order => ({
  ...orderOf(undefined, { number: numberOf(seed) }),
  ...changed,
});

export const file = (bytes: Uint8Array | string, name = 'order.json'): File =>
  new File([typeof bytes === 'string' ? bytes : new Uint8Array(bytes)], name);
export const sealed = async (made: Order, recipient = mine.recipient, name = 'order.age'): Promise<File> =>
  file(await seal(orderBytes(made), [recipient]), name);

/** A shelf in memory; `full` makes it fail as a full disk does. */
export function memoryShelf(wanted = false) {
  const kept = { files: new Map(), progress: new Map(), notes: new Map(), wanted, full: false };
  const put = async ({ files, progress, notes }: Kept) => {
    if (kept.full) throw new Error('The disk is full.');
    kept.wanted = true;
    for (const one of files) kept.files.set(one.id, one);
    for (const one of notes) kept.notes.set(one.id, one);
    for (const job of progress) kept.progress.set(job.number, job);
  };
  const shelf: Shelf = {
    put,
    isWanted: () => kept.wanted,
    read: async () => ({
      files: [...kept.files.values()],
      progress: [...kept.progress.values()],
      notes: [...kept.notes.values()],
    }),
    drop: async (number) => {
      for (const id of [...kept.files.keys()]) if (id.startsWith(number)) kept.files.delete(id);
      kept.notes.delete(number);
      kept.progress.delete(number);
    },
    destroy: async () => {
      kept.files.clear();
      kept.notes.clear();
      kept.progress.clear();
      kept.wanted = false;
    },
  };
  return { kept, shelf };
}

export const benchOn = (shelf: Shelf = memoryShelf().shelf) =>
  createBench({
    ...{ offer: shop, orders, version, shelf },
    today: () => TODAY,
    t: (key, slots) => say(shop.words, `workroomPage.${key}`, slots),
  });

import { describe, expect, it } from 'vitest';
import { orderBytes } from '../../../src/order/makeOrder.ts';
import { advance, remake } from '../../../src/workroom/inHand.ts';
import { benchOn, file, memoryShelf, mine, numberOf, order, sealed, TODAY } from './benches.ts';

async function keptOrder() {
  const { kept, shelf } = memoryShelf();
  const bench = benchOn(shelf);
  await bench.setKeeping(true);
  await bench.giveKeys(mine.identity);
  await bench.openFiles([await sealed(order(1)), file(orderBytes(order(2)))]);
  return { kept, shelf, bench };
}

const job = (bench: ReturnType<typeof benchOn>) => {
  const [first] = bench.progress.get();
  if (first === undefined) throw new Error('There is a job.');
  return first;
};

describe('what is kept', () => {
  it('is sealed files and progress by number, and nothing of anybody', async () => {
    const { kept } = await keptOrder();
    expect([...kept.files.keys()]).toEqual([numberOf(1)]);
    expect([...kept.progress.keys()].sort()).toEqual([numberOf(1), numberOf(2)].sort());
    const all = [...kept.files.values()].map(({ bytes }) => new TextDecoder().decode(bytes)).join('');
    expect(all + JSON.stringify([...kept.progress.values()])).not.toMatch(/Ada|sphere/);
  });

  it('is nothing unless it is wanted, and nothing once it is not', async () => {
    const { kept, shelf } = memoryShelf();
    const bench = benchOn(shelf);
    await bench.giveKeys(mine.identity);
    await bench.openFiles([await sealed(order(1))]);
    expect([kept.files.size, kept.progress.size, kept.wanted]).toEqual([0, 0, false]);
    await bench.setKeeping(true);
    expect([kept.files.size, kept.progress.size, kept.wanted]).toEqual([1, 1, true]);
    await bench.setKeeping(false);
    expect([kept.files.size, kept.progress.size, kept.wanted]).toEqual([0, 0, false]);
    expect(bench.held.get()).toHaveLength(1);
  });

  it('comes back sealed; the record with more in it counts', async () => {
    const { kept, shelf, bench } = await keptOrder();
    await bench.note(advance(job(bench), { state: 'lenses-ordered', on: TODAY, by: 'MT' }));
    const longer = remake(job(bench), { on: TODAY, reason: 'coating', eye: 'left', note: '' }, 'MT');
    kept.progress.set(longer.number, longer);
    await bench.recall();
    expect(job(bench)).toEqual(longer);
    const next = benchOn(shelf);
    await next.recall();
    expect([next.held.get().length, next.waiting.get().length, next.keeping.get()]).toEqual([0, 1, true]);
    await next.giveKeys(mine.identity);
    expect(next.held.get()[0]?.id).toBe(numberOf(1));
  });

  it('is said to have failed when the disk is full, and all is still there', async () => {
    const { kept, bench } = await keptOrder();
    kept.full = true;
    await bench.note(advance(job(bench), { state: 'cut', on: TODAY, by: '' }));
    expect(bench.failed.get()).toContain('The disk is full.');
    expect(job(bench).steps).toHaveLength(2);
  });

  it('goes order by order, or altogether', async () => {
    const { kept, bench } = await keptOrder();
    await bench.forget(numberOf(1));
    expect([[...kept.files.keys()], [...kept.progress.keys()]]).toEqual([[], [numberOf(2)]]);
    expect(bench.held.get().map(({ id }) => id)).toEqual([numberOf(2)]);
    await bench.wipe();
    expect([kept.progress.size, kept.wanted, bench.held.get(), bench.progress.get()]).toEqual([
      0,
      false,
      [],
      [],
    ]);
  });

  it('goes out as one file and comes back in on another machine', async () => {
    const { bench } = await keptOrder();
    const next = benchOn();
    await next.giveKeys(mine.identity);
    await next.importBundle(await bench.exported());
    expect(next.progress.get()).toEqual(bench.progress.get());
    expect(next.held.get().map(({ digest }) => digest)).toEqual([bench.held.get()[0]?.digest]);
    await next.importBundle(new Blob(['{}\n']));
    expect(next.imported.get()).toContain('Nothing of it was taken.');
    expect(next.progress.get()).toEqual(bench.progress.get());
  });
});

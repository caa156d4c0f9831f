import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderBytes } from '../../../src/order/makeOrder.ts';
import { benchOn, file, mine, numberOf, order, other, sealed } from './benches.ts';

const kinds = (bench: ReturnType<typeof benchOn>) => bench.told.get().map(({ kind }) => kind);

describe('opening files', () => {
  it('gives each its own outcome, in their order, and opens what is an order', async () => {
    const bench = benchOn();
    await bench.giveKeys(mine.identity);
    const bytes = orderBytes(order(1));
    await bench.openFiles([
      file(bytes.subarray(0, 700)),
      file(bytes),
      file(''),
      file(bytes),
      await sealed(order(2)),
      await sealed(order(3), other.recipient),
    ]);
    expect(kinds(bench)).toEqual(['refused', 'opened', 'refused', 'same', 'opened', 'refused']);
    expect(bench.held.get().map(({ job }) => job.number)).toEqual([numberOf(1), numberOf(2)]);
    expect(bench.chosen.get()).toBe(numberOf(1));
    expect(bench.progress.get().map(({ steps }) => steps[0]?.on)).toEqual(['2026-11-27', '2026-11-27']);
  });

  it('never fails, whatever the bytes and the name are', async () => {
    const bench = benchOn();
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(fc.uint8Array(), fc.string()), { maxLength: 4 }), async (all) => {
        await bench.openFiles(all.map(([bytes, name]) => file(bytes, name)));
        expect(kinds(bench).filter((kind) => kind !== 'refused')).toEqual([]);
        for (const { name, lines } of bench.told.get())
          expect([/\p{C}/u.test(name), lines.length > 0]).toEqual([false, true]);
      }),
      { numRuns: 60 },
    );
  });

  it('does not read a file that is too large', async () => {
    const bench = benchOn();
    const large = { name: 'large', size: 200_000_000, arrayBuffer: () => Promise.reject(new Error('read')) };
    await bench.openFiles([large as unknown as File]);
    expect(bench.told.get()[0]?.lines).toEqual([
      'The file has 200.0 MB; an order file has at most 20.0 MB. It was not read.',
    ]);
  });

  it('keeps two orders of one number apart', async () => {
    const bench = benchOn();
    await bench.openFiles([file(orderBytes(order(1))), file(orderBytes(order(1, { notes: 'Another.' })))]);
    expect(bench.held.get().map(({ id }) => id.length)).toEqual([12, 21]);
    expect(bench.progress.get()).toHaveLength(1);
    expect(bench.told.get()[1]?.lines[1]).toContain(bench.held.get()[1]?.digest);
  });

  it('says where an order comes from when it is not as it should be', async () => {
    const bench = benchOn();
    const shop = { name: 'Another', address: 'https://another.example', version: 'f'.repeat(64) };
    await bench.openFiles([file(orderBytes(order(1, { shop, consents: [] }))), await sealed(order(2))]);
    const [said] = bench.held.get();
    expect(said?.provenance.join(' ')).toMatch(
      /another shop: Another.*not sealed.*have changed.*“health-data”/,
    );
    await bench.giveKeys(mine.identity);
    expect(bench.held.get()[1]?.provenance).toEqual([]);
  });
});

describe('a private key', () => {
  it('that is none is refused without a word of it', async () => {
    const bench = benchOn();
    const nearly = mine.identity.slice(0, -1);
    expect(await bench.giveKeys(`# mine\n${nearly}`)).toMatch(
      /^The private key in line 2 has a typing error/,
    );
    expect(await bench.giveKeys('')).toMatch(/no private key/);
    expect(bench.keys.get()).toEqual([]);
  });

  it('opens what waited for it; locking makes it wait again and forgets all that was open', async () => {
    const bench = benchOn();
    await bench.openFiles([await sealed(order(1)), file(orderBytes(order(2)))]);
    expect(kinds(bench)).toEqual(['waits', 'opened']);
    await bench.giveKeys(other.identity);
    expect(kinds(bench)).toEqual(['refused']);
    await bench.giveKeys(mine.identity);
    expect([bench.held.get().length, bench.waiting.get().length]).toEqual([2, 0]);
    bench.enter(numberOf(1), '0.right.sphere', '-3');
    bench.lock();
    expect(bench.held.get()).toEqual([]);
    expect(bench.keys.get()).toEqual([]);
    expect(bench.drafts.get()).toEqual({});
    expect(bench.names.get().size).toBe(0);
    expect(bench.waiting.get().map(({ id }) => id)).toEqual([numberOf(1)]);
    expect(JSON.stringify([bench.told.get(), bench.waiting.get(), bench.progress.get()])).not.toContain(
      'Ada',
    );
  });
});

import { describe, expect, it } from 'vitest';
import { readNotes } from '../../../src/islands/workroom/keepNotes.ts';
import { orderBytes } from '../../../src/order/makeOrder.ts';
import { isSealed } from '../../../src/order/seal.ts';
import { benchOn, file, memoryShelf, mine, numberOf, order, other, sealed } from './benches.ts';

const FIELD = '0.right.sphere';

async function typedOrder(wanted = true) {
  const { kept, shelf } = memoryShelf(wanted);
  const bench = benchOn(shelf);
  await bench.giveKeys(mine.identity);
  await bench.openFiles([await sealed(order(1)), file(orderBytes(order(2)))]);
  for (const seed of [1, 2]) bench.enter(numberOf(seed), FIELD, '-3.25');
  await bench.sealNotes();
  return { kept, shelf, bench };
}

describe('what is typed for an order', () => {
  it('is kept sealed, and only beside a file that came sealed', async () => {
    const { kept } = await typedOrder();
    expect([...kept.notes.keys()]).toEqual([numberOf(1)]);
    const { bytes } = kept.notes.get(numberOf(1));
    expect(isSealed(bytes)).toBe(true);
    expect(new TextDecoder().decode(bytes)).not.toContain('sphere');
  });

  it('goes to no shelf that is not wanted', async () => {
    const { kept } = await typedOrder(false);
    expect([kept.notes.size, kept.wanted]).toEqual([0, false]);
  });

  it('is there again with the order, on this machine and another, and after locking', async () => {
    const { shelf, bench } = await typedOrder();
    const [again, elsewhere] = [benchOn(shelf), benchOn()];
    await again.recall();
    await elsewhere.importBundle(await bench.exported());
    bench.lock();
    expect(bench.drafts.get()).toEqual({});
    for (const one of [bench, again, elsewhere]) {
      await one.giveKeys(mine.identity);
      expect(one.drafts.get()[numberOf(1)]).toEqual({ [FIELD]: '-3.25' });
    }
  });

  it('is left out where another key sealed it, and goes with the order', async () => {
    const { kept, bench } = await typedOrder();
    const strange = benchOn();
    await strange.giveKeys(other.identity);
    await strange.openFiles([await sealed(order(1), other.recipient)]);
    await strange.openNotes(numberOf(1));
    expect(strange.drafts.get()).toEqual({});
    await bench.forget(numberOf(1));
    expect([kept.notes.size, bench.notes.get().size]).toEqual([0, 0]);
  });
});

describe('notes', () => {
  it.each(['', '[]', 'null', '{"a":1}', '{"<b>":"x"}', `{"a":"${'x'.repeat(401)}"}`])(
    'are not taken from %j',
    (text) => {
      expect(readNotes(text)).toBeNull();
    },
  );

  it('are texts by field', () => {
    expect(readNotes('{"0.right.sphere":"-1","0.right.stated-sphere":"<b>"}')).not.toBeNull();
  });
});

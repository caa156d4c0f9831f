import { describe, expect, it } from 'vitest';
import type { BasketAnswer } from '../../../src/configurator/basket/answerBasket.ts';
import { BASKET, type Basket, NO_BASKET, put } from '../../../src/configurator/basket/basket.ts';
import { createBasket } from '../../../src/configurator/basket/basketStores.ts';
import { hold, look } from '../../../src/configurator/keeping/holding.ts';
import { emptyShelves, refusing } from '../keeping/shelf.ts';

const ANSWER: BasketAnswer = { pairs: [], price: null, whole: null, faults: [], request: null };
const one = put(NO_BASKET, { frame: 'dunlin', entries: { use: 'distance' } }) ?? NO_BASKET;

/** A basket whose engine answers when it is told to. */
function opened(first: Basket = one, onDevice = false) {
  const shelves = emptyShelves();
  hold(shelves, BASKET, first, onDevice);
  const waiting: ((answer: BasketAnswer | null) => void)[] = [];
  const stores = createBasket({
    shelves,
    ask: () => new Promise((settle) => waiting.push(settle)),
    date: '2026-11-25',
  });
  return { stores, shelves, waiting };
}

describe('createBasket', () => {
  it('holds each change at once, where the basket is held', () => {
    const { stores, shelves } = opened(one, true);
    expect(stores.copy(1)).toBe(2);
    stores.enterTerm('codes', 'X');
    expect(look(shelves, BASKET)).toEqual({ value: stores.basket.get(), onDevice: true, damaged: false });
    expect(shelves.tab.stored.size).toBe(0);
    stores.remove(1);
    expect(look(shelves, BASKET).value?.pairs.map(({ id }) => id)).toEqual([2]);
  });

  it('leaves the device when the tick is taken out', () => {
    const { stores, shelves } = opened(one, true);
    stores.keep(false);
    expect(shelves.device.stored.size).toBe(0);
    expect(look(shelves, BASKET).value).toEqual(one);
  });

  it('has changed before those who listen count what is held', () => {
    const { stores, shelves } = opened();
    const counted: number[] = [];
    stores.basket.listen(() => counted.push(look(shelves, BASKET).value?.pairs.length ?? 0));
    stores.copy(1);
    expect(counted).toEqual([2]);
  });

  it('drops what is said of an older basket', async () => {
    const { stores, waiting } = opened();
    const older = stores.judge();
    stores.copy(1);
    waiting[1]?.(ANSWER);
    waiting[0]?.({ ...ANSWER, faults: [{ field: null, message: '', expected: '', missing: false }] });
    await older;
    expect(stores.answered.get()).toEqual({ basket: stores.basket.get(), answer: ANSWER });
  });

  it('tells of an engine that fails', async () => {
    const { stores, waiting } = opened();
    const judged = stores.judge();
    waiting[0]?.(null);
    await judged;
    expect(stores.failed.get()).toBe(true);
  });

  it('says that it found something damaged, and drops it', () => {
    const shelves = emptyShelves();
    shelves.device.setItem(BASKET.key, '{');
    const stores = createBasket({ shelves, ask: async () => ANSWER, date: '2026-11-25' });
    expect([stores.damaged, stores.basket.get(), shelves.device.stored.size]).toEqual([true, NO_BASKET, 0]);
  });

  it('says when the browser refuses to hold it, and goes on', () => {
    const shelves = { tab: refusing, device: refusing };
    const stores = createBasket({ shelves, ask: async () => ANSWER, date: '2026-11-25' });
    stores.enterTerm('codes', 'X');
    stores.keep(true);
    expect([stores.refused.get(), stores.onDevice.get(), stores.basket.get().terms]).toEqual([
      true,
      false,
      { codes: 'X' },
    ]);
  });
});

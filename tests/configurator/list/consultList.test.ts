import { describe, expect, it } from 'vitest';
import type { ListTold } from '../../../src/configurator/list/answerList.ts';
import { consultList, type ListEngine } from '../../../src/configurator/list/consultList.ts';
import { createFrameList } from '../../../src/configurator/list/frameList.ts';
import { DATE, shop } from '../shop.ts';
import { answer, facts } from './list.ts';

/** A list of two frames with an engine that only notes what it is asked. */
function listed() {
  const stores = createFrameList({
    shop: shop.shop,
    words: shop.words,
    facts: [facts('a'), facts('b')],
    date: DATE,
  });
  const asked: Parameters<ListEngine['ask']>[0][] = [];
  let tell: (told: ListTold) => void = () => undefined;
  consultList(stores, {
    ask: (one) => asked.push(one),
    listen: (heard) => {
      tell = heard;
    },
  });
  return { stores, asked, tell: (told: ListTold) => tell(told) };
}

const whole = { 'right.sphere': '-3', 'left.sphere': '-3', 'pd.mode': 'both', 'pd.both': '63' } as const;
const part = (serial: number, frame: string, done: boolean): ListTold => ({
  serial,
  listed: [{ frame, answer: answer(frame) }],
  done,
});

describe('the engine of the list', () => {
  it('is asked once the prescription is whole, and not again for a blank', () => {
    const { stores, asked } = listed();
    stores.enter('right.sphere', '-3');
    expect(asked).toHaveLength(0);
    stores.fill(whole);
    expect(asked).toHaveLength(1);
    stores.enter('right.sphere', ' -3 ');
    expect(asked).toHaveLength(1);
  });

  it('fills the answers part by part', () => {
    const { stores, tell } = listed();
    stores.fill(whole);
    expect(stores.progress.get()).toBe('judging');
    tell(part(1, 'a', false));
    tell(part(1, 'b', true));
    expect([...stores.answers.get().keys()]).toEqual(['a', 'b']);
    expect(stores.progress.get()).toBe('done');
  });

  it('is not heard about an older request', () => {
    const { stores, tell } = listed();
    stores.fill(whole);
    stores.enter('left.sphere', '-4');
    tell(part(1, 'a', true));
    expect(stores.answers.get().size).toBe(0);
  });

  it('is asked anew for other sizes, and not for another mounting', () => {
    const { stores, asked } = listed();
    stores.fill(whole);
    stores.filters.set({ ...stores.filters.get(), mounting: 'full' });
    expect(asked).toHaveLength(1);
    stores.filters.set({ ...stores.filters.get(), widthFromMm: 50 });
    expect(asked.at(-1)?.limits.widthFromMm).toBe(50);
  });

  it('leaves no answer standing once an entry is taken away', () => {
    const { stores, tell } = listed();
    stores.fill(whole);
    tell(part(1, 'a', true));
    stores.enter('left.sphere', '');
    expect(stores.answers.get().size).toBe(0);
    expect(stores.progress.get()).toBe('idle');
  });
});

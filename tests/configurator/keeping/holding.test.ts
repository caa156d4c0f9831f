import { describe, expect, it } from 'vitest';
import { drop, type Holding, hold, look } from '../../../src/configurator/keeping/holding.ts';
import { emptyShelves, refusing } from './shelf.ts';

const NUMBER: Holding<number> = { key: 'n', read: (json) => (typeof json === 'number' ? json : null) };

describe('what is held', () => {
  it.each([false, true])('is found again where it was put (on the device: %s)', (onDevice) => {
    const shelves = emptyShelves();
    expect(hold(shelves, NUMBER, 7, onDevice)).toBe(true);
    expect(look(shelves, NUMBER)).toEqual({ value: 7, onDevice, damaged: false });
    expect([shelves.tab.stored.size, shelves.device.stored.size]).toEqual(onDevice ? [0, 1] : [1, 0]);
  });

  it('moves when it is put into the other store, and leaves nothing behind', () => {
    const shelves = emptyShelves();
    hold(shelves, NUMBER, 7, true);
    hold(shelves, NUMBER, 8, false);
    expect(shelves.device.stored.size).toBe(0);
    expect(look(shelves, NUMBER).value).toBe(8);
  });

  it.each(['not JSON', '"text"', '{}', 'null', ''])(
    'counts as nothing and as damaged when it is %j',
    (text) => {
      const shelves = emptyShelves();
      shelves.device.setItem('n', text);
      expect(look(shelves, NUMBER)).toEqual({ value: null, onDevice: false, damaged: true });
    },
  );

  it('in the tab is found beside a damaged one on the device', () => {
    const shelves = emptyShelves();
    shelves.device.setItem('n', '{');
    shelves.tab.setItem('n', '3');
    expect(look(shelves, NUMBER)).toEqual({ value: 3, onDevice: false, damaged: true });
  });

  it('is gone from both stores when it is dropped', () => {
    const shelves = emptyShelves();
    shelves.device.setItem('n', '1');
    shelves.tab.setItem('n', '2');
    expect(drop(shelves, NUMBER)).toBe(true);
    expect(look(shelves, NUMBER)).toEqual({ value: null, onDevice: false, damaged: false });
  });

  it('stays where it is when the other store refuses', () => {
    const shelves = { tab: emptyShelves().tab, device: refusing };
    hold({ ...emptyShelves(), tab: shelves.tab }, NUMBER, 7, false);
    expect(hold(shelves, NUMBER, 7, true)).toBe(false);
    expect(look(shelves, NUMBER).value).toBe(7);
    expect(drop(shelves, NUMBER)).toBe(false);
  });
});

import { describe, expect, it } from 'vitest';
import {
  BASKET,
  copyForAnother,
  enter,
  MOST_PAIRS,
  NO_BASKET,
  put,
  remove,
  replace,
} from '../../../src/configurator/basket/basket.ts';
import type { HeldPair } from '../../../src/configurator/keeping/parts.ts';

const pair = (sphere: string): HeldPair => ({
  frame: 'dunlin',
  entries: { 'right.sphere': sphere, wearer: 'child', material: 'polycarbonate' },
});

function filled(count: number) {
  let basket = NO_BASKET;
  for (let at = 0; at < count; at += 1) basket = put(basket, pair(`-${at}`)) ?? basket;
  return basket;
}

describe('a basket', () => {
  it('gives each pair a number of its own, and never gives it again', () => {
    const basket = remove(filled(3), 2);
    expect(basket.pairs.map(({ id }) => id)).toEqual([1, 3]);
    expect(put(basket, pair('-9'))?.pairs.map(({ id }) => id)).toEqual([1, 3, 4]);
    const emptied = [1, 2, 3].reduce(remove, filled(3));
    const again = BASKET.read(JSON.parse(JSON.stringify(emptied)));
    expect(again && put(again, pair('-9'))?.pairs.map(({ id }) => id)).toEqual([4]);
  });

  it('takes an entry of one pair, and leaves the others', () => {
    const basket = enter(filled(2), 2, 'issued', '2026-06-01');
    expect(basket.pairs.map(({ entries }) => entries.issued)).toEqual([undefined, '2026-06-01']);
  });

  it('takes as many pairs as one request may hold', () => {
    expect(filled(MOST_PAIRS).pairs).toHaveLength(20);
    expect(put(filled(MOST_PAIRS), pair('-9'))).toBeNull();
  });

  it('takes over the terms that come with a pair, and keeps those that it has', () => {
    const first = put(NO_BASKET, pair('-1'), { destination: 'CA', codes: 'X', 'right.sphere': '-1' });
    expect(first?.terms).toEqual({ destination: 'CA', codes: 'X' });
    expect(first && put(first, pair('-2'), { destination: 'DE' })?.terms).toEqual({
      destination: 'DE',
      codes: 'X',
    });
  });

  it('copies a pair for another wearer without anything of the first', () => {
    const basket = copyForAnother(filled(1), 1);
    expect(basket?.pairs[1]).toEqual({ id: 2, frame: 'dunlin', entries: { material: 'polycarbonate' } });
    expect(copyForAnother(filled(1), 7)).toBeNull();
  });

  it('puts a changed pair back in its place', () => {
    const basket = replace(filled(3), 2, pair('-7'));
    expect(basket.pairs.map(({ entries }) => entries['right.sphere'])).toEqual(['-0', '-7', '-2']);
    expect(replace(filled(3), 9, pair('-7'))).toEqual(filled(3));
  });

  it('is read back as it was written', () => {
    const basket = put(filled(2), pair('-1'), { codes: 'X' });
    expect(BASKET.read(JSON.parse(JSON.stringify(basket)))).toEqual(basket);
  });

  it.each([
    null,
    [],
    {},
    { pairs: 7 },
    { pairs: [7] },
    { pairs: [{ id: 0, frame: 'dunlin', entries: {} }] },
    { pairs: [{ id: 1, frame: '../x', entries: {} }] },
    { pairs: [pair('-1'), pair('-2')] },
    { pairs: ['-1', '-2'].map((sphere) => ({ id: 1, ...pair(sphere) })) },
  ])('is not read from %j', (json) => {
    expect(BASKET.read(json)).toBeNull();
  });
});

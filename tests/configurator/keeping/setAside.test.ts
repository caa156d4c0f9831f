import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { HeldPair } from '../../../src/configurator/keeping/parts.ts';
import { ASIDE, MOST_ASIDE, samePair, setAside } from '../../../src/configurator/keeping/setAside.ts';

const pair = (material: string): HeldPair => ({ frame: 'dunlin', entries: { material, use: 'distance' } });

describe('setAside', () => {
  it('takes three packages and refuses a fourth', () => {
    const three = ['a', 'b', 'c'].reduce<readonly HeldPair[]>((all, name) => {
      const set = setAside(all, pair(name));
      return set.ok ? set.pairs : all;
    }, []);
    expect(three.map(({ entries }) => entries.material)).toEqual(['a', 'b', 'c']);
    expect(MOST_ASIDE).toBe(three.length);
    expect(setAside(three, pair('d'))).toEqual({ ok: false, why: 'full' });
  });

  it('takes no package twice, in whatever order its entries were made', () => {
    const turned: HeldPair = { frame: 'dunlin', entries: { use: 'distance', material: 'a' } };
    expect(samePair(pair('a'), turned)).toBe(true);
    expect(setAside([pair('a')], turned)).toEqual({ ok: false, why: 'there' });
    expect(samePair(pair('a'), { ...turned, frame: 'knot' })).toBe(false);
  });
});

describe('what is read as set aside', () => {
  it('is what was written', () => {
    expect(ASIDE.read(JSON.parse(JSON.stringify([pair('a'), pair('b')])))).toEqual([pair('a'), pair('b')]);
  });

  it.each([{}, 'text', 7, null, [7], [{}], [{ frame: '../x', entries: {} }], ['a', 'b', 'c', 'd'].map(pair)])(
    'is nothing where it is %j',
    (json) => {
      expect(ASIDE.read(json)).toBeNull();
    },
  );

  it('holds known entries alone, whatever was written', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (entries) => {
        const [read] = ASIDE.read([{ frame: 'dunlin', entries }]) ?? [];
        for (const text of Object.values(read?.entries ?? {})) expect(typeof text).toBe('string');
      }),
    );
    expect(ASIDE.read([{ frame: 'dunlin', entries: { use: 'all', codes: 'X', nonsense: '1' } }])).toEqual([
      { frame: 'dunlin', entries: { use: 'all' } },
    ]);
  });
});

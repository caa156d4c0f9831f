import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listNames, nearest } from '../../src/catalogue/nearest.ts';

describe('the nearest name', () => {
  it.each([
    ['colorways', ['colourways', 'collection', 'sizes'], 'colourways'],
    ['prcie', ['price', 'prism'], 'price'],
    ['PRICE', ['price', 'prism'], 'price'],
    ['habour', ['harbour', 'marsh'], 'harbour'],
    ['zzz', ['price', 'prism'], null],
    ['x', ['y'], 'y'],
    ['x', ['y', 'z'], null],
    ['templeLength', ['temple', 'bridge'], 'temple'],
    ['USX', ['USD', 'UGX'], null],
    ['temple', [], null],
  ])('to %s of %j is %s', (name, known, found) => {
    expect(nearest(name, known)).toBe(found);
  });

  it('law: a known name is nearest to itself', () => {
    const names = fc.uniqueArray(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1 });
    fc.assert(
      fc.property(names, (known) => {
        expect(nearest(known.at(-1) ?? '', known)).toBe(known.at(-1));
      }),
    );
  });
});

describe('a list of names', () => {
  it('is cut where it is long', () => {
    expect(listNames([])).toBe('none');
    expect(listNames(['a'])).toBe('a');
    expect(listNames(['a', 'b', 'c'])).toBe('a, b or c');
    expect(listNames(['a', 'b', 'c', 'd'], 2)).toBe('a, b and 2 more');
  });
});

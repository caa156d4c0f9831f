import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pairInScope } from '../../src/pricing/scope.ts';
import { everywhere, lenses, pair } from './offer.ts';

const LISTS = [
  ['collections', 'harbour'],
  ['frames', 'dunlin'],
  ['designs', 'single'],
  ['materials', 'standard'],
  ['tints', 'clear'],
  ['coatings', 'quiet'],
] as const;

describe('the scope of a promotion', () => {
  test.each(LISTS)('by %s holds a pair with one of them, and no other', (list, id) => {
    expect(pairInScope({ ...everywhere, [list]: ['other', id] }, pair)).toBe(true);
    expect(pairInScope({ ...everywhere, [list]: ['other'] }, pair)).toBe(false);
    expect(pairInScope({ ...everywhere, [list]: [] }, pair)).toBe(false);
  });

  test.each(LISTS)('by %s leaves out a pair that has none', (list, id) => {
    const bare = ['collections', 'frames'].includes(list)
      ? { ...pair, frame: null }
      : {
          ...pair,
          lenses: ['tints', 'coatings'].includes(list) ? { ...lenses, tint: null, coating: null } : null,
        };
    expect(pairInScope({ ...everywhere, [list]: [id] }, bare)).toBe(false);
  });

  test('law: all lists must agree, so one more list never takes more in', () => {
    const some = fc.option(fc.constantFrom<readonly string[]>(['yes'], ['no']), { nil: null });
    const choice = fc.tuple(...LISTS.map(() => some));
    fc.assert(
      fc.property(choice, (choices) => {
        const named = LISTS.map(([list, id], i) => {
          const chosen = choices[i] ?? null;
          return [list, chosen && (chosen[0] === 'yes' ? [id] : ['other'])];
        });
        const inside = pairInScope({ ...everywhere, ...Object.fromEntries(named) }, pair);
        expect(inside).toBe(!choices.some((chosen) => chosen?.[0] === 'no'));
      }),
    );
  });
});

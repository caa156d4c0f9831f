import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { marksOf } from '../../../src/configurator/keeping/marks.ts';

describe('marksOf', () => {
  it.each([
    [[5, 3, 4], 'less', ['worst', 'best', null]],
    [[5, 3, 4], 'more', ['best', 'worst', null]],
    [[3, 3, 4], 'less', ['best', 'best', 'worst']],
    [[3, 3, 3], 'less', [null, null, null]],
    [[3, null, 4], 'more', ['worst', null, 'best']],
    [[3, null, null], 'less', [null, null, null]],
    [[], 'less', []],
  ] as const)('marks %j, where %s is better, as %j', (values, better, marks) => {
    expect(marksOf(values, better)).toEqual(marks);
  });

  it('turns best and worst about when the other side is better', () => {
    const values = fc.array(fc.option(fc.integer({ min: 0, max: 4 })), { maxLength: 3 });
    fc.assert(
      fc.property(values, (all) => {
        const turned = marksOf(all, 'more').map((side) =>
          side === 'best' ? 'worst' : side === 'worst' ? 'best' : null,
        );
        expect(turned).toEqual(marksOf(all, 'less'));
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveRising } from '../../src/optics/solveRising.ts';
import { real } from './realistic.ts';

/** The same cell by halving the range, which asks 24 times. */
function halved(measure: (at: number) => number, aim: number): number {
  let [low, high] = [0, 1];
  for (let pass = 0; pass < 24; pass++) {
    const middle = (low + high) / 2;
    if (measure(middle) < aim) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

describe('where a rising measure reaches an aim', () => {
  it('is the cell that halving comes to, for curves bent either way and aims beyond either end', () => {
    fc.assert(
      fc.property(real(0.2, 6), real(-20, 20), real(-0.1, 1.1), (bend, from, share) => {
        const measure = (at: number) => from + 9 * at ** bend;
        const aim = from + 9 * share;
        expect(solveRising(measure, aim)).toBe(halved(measure, aim));
      }),
    );
  });

  it('is found in fewer than 24 askings where the measure is nearly straight', () => {
    let asked = 0;
    solveRising((at) => {
      asked += 1;
      return at + 0.1 * at * at;
    }, 0.7);
    expect(asked).toBeLessThan(14);
  });
});

import { describe, expect, it } from 'vitest';
import { answerFor, changed } from '../fixtures/bench.ts';

/** Front curve of both lenses in the bench ring, whose rim is bent to 4 D; 2, 4, 6 and 8 D are offered. */
const frontOf = (sphere: number) => {
  const prescription = { ...changed({}).prescription, right: { sphere }, left: { sphere } };
  const { right, left } = answerFor({ prescription });
  expect(left?.baseCurveD).toBe(right?.baseCurveD);
  return right?.baseCurveD ?? Number.NaN;
};

describe('the front of a plus lens', () => {
  it('never flattens as the power grows, up to powers that no front leaves hollow behind', () => {
    const fronts = Array.from({ length: 48 }, (_, i) => frontOf((i + 1) / 4));
    expect(fronts).toEqual(fronts.toSorted((one, other) => one - other));
  });

  it('is at least as steep as the lens is strong while the material has such a curve, else its steepest', () => {
    expect(frontOf(6)).toBe(6);
    expect(frontOf(7)).toBe(8);
    expect(frontOf(9)).toBe(8);
    expect(frontOf(12)).toBe(8);
  });
});

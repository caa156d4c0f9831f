/**
 * Where a rising measure of a number from 0 to 1 reaches an aim. Halving the range 24 times would ask it 24 times; a
 * line through the two ends, bent by the Illinois rule, comes to the same cell of 2^-24 in less than half as many.
 */

export type Measure = (at: number) => number;

const CELLS = 2 ** 24;

/** The middle of the cell of 2^-24 in which `measure`, rising from 0 to 1, reaches `aim`, or of the first or last. */
export function solveRising(measure: Measure, aim: number): number {
  if (measure(0) >= aim) return 0.5 / CELLS;
  if (measure(1) < aim) return 1 - 0.5 / CELLS;
  let [low, high] = [0, CELLS];
  let [below, above] = [measure(0) - aim, measure(1) - aim];
  let before = '';
  while (high - low > 1) {
    const guess = Math.round(low + ((high - low) * below) / (below - above));
    const at = Math.min(high - 1, Math.max(low + 1, guess));
    const off = measure(at / CELLS) - aim;
    const side = off < 0 ? 'low' : 'high';
    if (side === 'low') [low, below] = [at, off];
    else [high, above] = [at, off];
    // An end that stays for the second time is taken for half as far off.
    if (side === before && side === 'low') above /= 2;
    if (side === before && side === 'high') below /= 2;
    before = side;
  }
  return (low + high) / 2 / CELLS;
}

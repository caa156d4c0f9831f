/** A radius that no edge of a lens has between its neighbours. */

/** How far one may lie from the middle of those beside it, mm, besides a step along the edge: what a tracer scatters. */
const SCATTER_MM = 0.3;

/** Two slips, with the neighbours of each: a list with more leaps is wrong as a whole. */
const MOST_LEAPS = 6;

/**
 * Index of the radius that leaps farthest out of the line of those beside it, and where that line is, mm; null where
 * none does. An edge turns no corner within a step of its trace, so a leap is a slip in the list.
 */
export function outOfLine(radiiMm: readonly number[]): { at: number; lineMm: number } | null {
  const count = radiiMm.length;
  const of = (index: number) => radiiMm[(index + count) % count] ?? 0;
  const leaps = radiiMm.flatMap((radius, at) => {
    const lineMm = (of(at - 1) + of(at + 1)) / 2;
    const farMm = Math.abs(radius - lineMm);
    return farMm > SCATTER_MM + (2 * Math.PI * lineMm) / count ? [{ at, lineMm, farMm }] : [];
  });
  if (leaps.length > MOST_LEAPS) return null;
  const farthest = leaps.toSorted((a, b) => b.farMm - a.farMm)[0];
  return farthest === undefined ? null : { at: farthest.at, lineMm: farthest.lineMm };
}

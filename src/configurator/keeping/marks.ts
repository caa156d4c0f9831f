/** Which of compared figures is the best and which the worst. */

export type Side = 'best' | 'worst' | null;

/**
 * One mark a figure. Figures that are all alike, or a figure with no other beside it, have none; several that share
 * an end share its mark.
 */
export function marksOf(values: readonly (number | null)[], better: 'less' | 'more'): readonly Side[] {
  const known = values.filter((value) => value !== null);
  const [least, most] = [Math.min(...known), Math.max(...known)];
  if (known.length < 2 || least === most) return values.map(() => null);
  const [best, worst] = better === 'less' ? [least, most] : [most, least];
  return values.map((value) => (value === best ? 'best' : value === worst ? 'worst' : null));
}

/** Which promotions run on the same days, in words. */
import type { Calendar, Overlap } from './calendar.ts';

function days({ from, to }: Overlap): string {
  if (from === null && to === null) return 'always';
  if (from === null) return `until ${to}`;
  return to === null ? `from ${from} on` : `from ${from} to ${to}`;
}

/** One line for each pair of promotions; a join that one side alone declares says which file to mend. */
export function printOverlaps({ overlaps, runs }: Calendar): string[] {
  const title = (id: string) => runs.find((run) => run.id === id)?.title ?? id;
  const line = (overlap: Overlap) => {
    const [one, other] = overlap.promotions.map(title);
    return `  Together ${days(overlap)}: ${one}, ${other}`;
  };
  return overlaps.map((overlap) => {
    if (overlap.joins === 'both') return `${line(overlap)}; may be joined.`;
    if (overlap.joins === 'neither')
      return `${line(overlap)}; not joined, an order gets the first that gives something.`;
    const { refusing, promotions } = overlap;
    const naming = promotions.find((id) => id !== refusing);
    return (
      `${line(overlap)}; NOT joined, since one side alone says so: ` +
      `name ${naming} below joins in promotions/${refusing}.md, or take ${refusing} out of promotions/${naming}.md.`
    );
  });
}

/** Promotions in time: when each runs, which run together and may be used together, and when none runs. */
import { addDays, dayEndMs, dayStartMs, zonedText } from '../../catalogue/dayBounds.ts';
import type { Promotion } from '../../catalogue/promotion.ts';

interface Instant {
  /** On the shop's clock. */
  readonly local: string;
  readonly utc: string;
}

export interface Run {
  readonly id: string;
  readonly title: string;
  readonly code: string | null;
  readonly state: 'over' | 'running' | 'coming';
  readonly starts: string | null;
  readonly ends: string | null;
  /** Null: open. */
  readonly first: Instant | null;
  readonly last: Instant | null;
}

/** Days on which two promotions both run; null: open at that end. */
interface Span {
  readonly from: string | null;
  readonly to: string | null;
}

export interface Overlap extends Span {
  readonly promotions: readonly [string, string];
  /** `one-sided`: one names the other, which does not name it, and so they do not join. */
  readonly joins: 'both' | 'one-sided' | 'neither';
  /** The one that does not accept the other, where one alone does. */
  readonly refusing: string | null;
}

export interface Calendar {
  readonly runs: readonly Run[];
  readonly overlaps: readonly Overlap[];
  /** Days between the first and the last dated promotion without a code on which none of them runs. */
  readonly gaps: readonly { readonly from: string; readonly to: string }[];
}

function instant(epochMs: number, timeZone: string): Instant {
  return { local: zonedText(epochMs, timeZone), utc: `${new Date(epochMs).toISOString().slice(0, 19)}Z` };
}

function runOf({ id, title, code, starts, ends }: Promotion, date: string, timeZone: string): Run {
  const over = ends !== null && ends < date;
  const coming = starts !== null && starts > date;
  return {
    ...{ id, title, code, starts, ends },
    state: over ? 'over' : coming ? 'coming' : 'running',
    first: starts === null ? null : instant(dayStartMs(starts, timeZone), timeZone),
    last: ends === null ? null : instant(dayEndMs(ends, timeZone), timeZone),
  };
}

/** The days that two share; null where there are none. */
function shared(one: Promotion, other: Promotion): Span | null {
  const starts = [one.starts, other.starts].filter((day) => day !== null).toSorted();
  const ends = [one.ends, other.ends].filter((day) => day !== null).toSorted();
  const from = starts.at(-1) ?? null;
  const to = ends[0] ?? null;
  return from !== null && to !== null && from > to ? null : { from, to };
}

function accepts({ joins }: Promotion, id: string): boolean {
  return joins === 'all' || (joins !== 'none' && joins.includes(id));
}

function overlapOf(one: Promotion, other: Promotion): Overlap | null {
  const span = shared(one, other);
  if (span === null) return null;
  const [forth, back] = [accepts(one, other.id), accepts(other, one.id)];
  // `all` and `none` speak of every promotion; a list that names this one and is not answered is a slip.
  const named =
    (forth && one.joins !== 'all' && !back) || (back && other.joins !== 'all' && !forth)
      ? 'one-sided'
      : 'neither';
  return {
    promotions: [one.id, other.id],
    ...span,
    joins: forth && back ? 'both' : named,
    refusing: forth === back ? null : forth ? other.id : one.id,
  };
}

function gapsBetween(promotions: readonly Promotion[]): { from: string; to: string }[] {
  const dated = promotions
    .filter(({ code, starts, ends }) => code === null && (starts !== null || ends !== null))
    .map(({ starts, ends }) => ({ from: starts ?? '0001-01-01', to: ends ?? '9999-12-31' }))
    .toSorted((a, b) => (a.from < b.from ? -1 : 1));
  const gaps: { from: string; to: string }[] = [];
  let reached: string | null = null;
  for (const { from, to } of dated) {
    if (reached !== null && reached < from && addDays(reached, 1) < from)
      gaps.push({ from: addDays(reached, 1), to: addDays(from, -1) });
    if (reached === null || to > reached) reached = to;
  }
  return gaps;
}

/** The calendar of promotions as seen on `date`, by first day. */
export function calendarOf(promotions: readonly Promotion[], date: string, timeZone: string): Calendar {
  const byStart = promotions.toSorted((a, b) => ((a.starts ?? '') < (b.starts ?? '') ? -1 : 1));
  return {
    runs: byStart.map((promotion) => runOf(promotion, date, timeZone)),
    overlaps: promotions.flatMap((one, at) =>
      promotions.slice(at + 1).flatMap((other) => overlapOf(one, other) ?? []),
    ),
    gaps: gapsBetween(promotions),
  };
}

/** The days from `date` on, each the first of a stretch in which the same promotions run. */
export function turningDays(promotions: readonly Promotion[], date: string): string[] {
  const turns = promotions.flatMap(({ starts, ends }) => [
    ...(starts === null ? [] : [starts]),
    ...(ends === null || ends === '9999-12-31' ? [] : [addDays(ends, 1)]),
  ]);
  return [...new Set([date, ...turns.filter((day) => day > date)])].toSorted();
}

/** Work in hand: where each job stands, what is late, what went wrong. Plain records; the day is passed in. */

import { compareDates, isCivilDate } from '../catalogue/civilDate.ts';
import { JOB_STATES, type JobState, type OpenState, type Workroom } from '../catalogue/workroom.ts';

/** One step of a job's way. */
export interface Step {
  readonly state: JobState;
  /** Civil date. */
  readonly on: string;
  readonly by: string;
}

/** Why something is made again. */
export interface Remake {
  /** Civil date. */
  readonly on: string;
  readonly reason: RemakeReason;
  readonly eye: 'right' | 'left' | 'both';
  readonly note: string;
}

export const REMAKE_REASONS = [
  'lens-power',
  'lens-surface',
  'coating',
  'layout',
  'cutting',
  'drilling',
  'frame',
  'measurement',
  'prescription',
  'not-adapted',
  'transport',
  'other',
] as const;
export type RemakeReason = (typeof REMAKE_REASONS)[number];

/** A job's progress, by its number alone: nothing of a person is in it. */
export interface Progress {
  readonly number: string;
  /** In the order in which they happened; the first is `received`. */
  readonly steps: readonly Step[];
  readonly remakes: readonly Remake[];
}

/** A job that has just come in. */
export const receivedJob = (number: string, on: string, by: string): Progress => ({
  number,
  steps: [{ state: 'received', on, by }],
  remakes: [],
});

/** Where a job stands: its last step. A record without steps counts as received on no known day. */
export const standing = ({ steps }: Progress): Step =>
  steps.at(-1) ?? { state: 'received', on: '0001-01-01', by: '' };

/** The state that usually follows; null after `sent`, and `lenses-ordered` again once a job was returned. */
export function nextState(state: JobState): JobState | null {
  if (state === 'sent') return null;
  if (state === 'returned') return 'lenses-ordered';
  return JOB_STATES[JOB_STATES.indexOf(state) + 1] ?? null;
}

/** The job one step on. Days do not run backwards: a step before the last one is put on the day of the last. */
export function advance(job: Progress, step: Step): Progress {
  const last = standing(job);
  const on = compareDates(step.on, last.on) < 0 ? last.on : step.on;
  return { ...job, steps: [...job.steps, { ...step, on }] };
}

/** The job begun again from its lenses, with the reason kept. */
export function remake(job: Progress, why: Remake, by: string): Progress {
  const again = advance(job, { state: 'lenses-ordered', on: why.on, by });
  return { ...again, remakes: [...job.remakes, why] };
}

/** Of two records of one job the one with more in it, which is the later one. */
export const laterRecord = (one: Progress, other: Progress): Progress =>
  other.steps.length + other.remakes.length > one.steps.length + one.remakes.length ? other : one;

/** Days from one civil date to another, below 0 when it is earlier. Throws a RangeError for a text that is none. */
export function daysBetween(from: string, to: string): number {
  for (const date of [from, to])
    if (!isCivilDate(date)) throw new RangeError(`"${date}" is not a date of the form YYYY-MM-DD.`);
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000);
}

/** A late job, and by how many days. */
export interface Late {
  readonly job: Progress;
  readonly state: OpenState;
  readonly days: number;
}

/** Jobs that have stood in their state for longer than the shop allows, the latest first. */
export function lateJobs(
  jobs: readonly Progress[],
  today: string,
  allowed: Workroom['lateAfterDays'],
): readonly Late[] {
  return jobs
    .flatMap((job): Late[] => {
      const { state, on } = standing(job);
      if (state === 'sent') return [];
      const days = daysBetween(on, today) - allowed[state];
      return days > 0 ? [{ job, state, days }] : [];
    })
    .toSorted((a, b) => b.days - a.days || (a.job.number < b.job.number ? -1 : 1));
}

/** How many jobs stand in each state. */
export function countByState(jobs: readonly Progress[]): Readonly<Record<JobState, number>> {
  const counts = Object.fromEntries(JOB_STATES.map((state) => [state, 0])) as Record<JobState, number>;
  for (const job of jobs) counts[standing(job).state] += 1;
  return counts;
}

/**
 * Jobs whose number holds the digits of `typed`, or whose wearer or buyer in `names` (by number, known once an order
 * was opened, kept in memory alone) holds its letters, whatever their case and accents. Nothing typed: all.
 */
export function searchJobs(
  jobs: readonly Progress[],
  typed: string,
  names: ReadonlyMap<string, readonly string[]>,
): readonly Progress[] {
  const wanted = plain(typed);
  if (wanted === '') return jobs;
  const digits = typed.replace(/[\s-]/g, '');
  const isNumber = /^\d+$/.test(digits);
  return jobs.filter(
    ({ number }) =>
      (isNumber && number.includes(digits)) ||
      (names.get(number) ?? []).some((name) => plain(name).includes(wanted)),
  );
}

const plain = (text: string) => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim();

/** A row of what went wrong: how often, and in how many of a hundred jobs. */
export interface Trouble {
  readonly reason: RemakeReason;
  readonly count: number;
  readonly perHundred: number;
}

/** What went wrong, most often first; what never did is left out. */
export function troubles(jobs: readonly Progress[]): readonly Trouble[] {
  const all = jobs.flatMap(({ remakes }) => remakes);
  return REMAKE_REASONS.map((reason) => {
    const count = all.filter((one) => one.reason === reason).length;
    return { reason, count, perHundred: Math.round((1000 * count) / Math.max(1, jobs.length)) / 10 };
  })
    .filter(({ count }) => count > 0)
    .toSorted((a, b) => b.count - a.count);
}

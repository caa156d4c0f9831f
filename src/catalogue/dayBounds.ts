/**
 * When a civil day begins and ends in a time zone, as instants. A day may begin at 01:00, where summer time begins at
 * midnight, and last 23 or 25 hours; so its ends are searched for on the zone's own calendar, never reckoned.
 */
import { civilDateAt } from './civilDate.ts';

const SECOND_MS = 1000;
const DAY_MS = 86_400_000;
/** No zone has ever been further from UTC. */
const FURTHEST_MS = 16 * 3_600_000;

/** The civil date `days` later (below 0: earlier). Throws a RangeError for no date or a year outside 1 to 9999. */
export function addDays(date: string, days: number): string {
  const start = Date.parse(`${date}T00:00:00Z`);
  return civilDateAt(start + days * DAY_MS, 'UTC');
}

/**
 * The first instant of a civil day in a time zone (IANA name), milliseconds since 1970 UTC. Of a day that the zone
 * left out, the first instant after it.
 */
export function dayStartMs(date: string, timeZone: string): number {
  const midnight = Date.parse(`${date}T00:00:00Z`);
  let before = (midnight - FURTHEST_MS) / SECOND_MS;
  let from = (midnight + FURTHEST_MS) / SECOND_MS;
  while (from - before > 1) {
    const middle = Math.floor((before + from) / 2);
    if (civilDateAt(middle * SECOND_MS, timeZone) >= date) from = middle;
    else before = middle;
  }
  return from * SECOND_MS;
}

/** The last millisecond of a civil day in a time zone, milliseconds since 1970 UTC. */
export function dayEndMs(date: string, timeZone: string): number {
  return dayStartMs(addDays(date, 1), timeZone) - 1;
}

/** An instant on the zone's clock with its distance from UTC, to the second: `2026-11-01T00:00:00-04:00`. */
export function zonedText(epochMs: number, timeZone: string): string {
  const format = new Intl.DateTimeFormat('en-u-ca-gregory-nu-latn', {
    ...{ timeZone, hourCycle: 'h23', timeZoneName: 'longOffset' },
    ...{
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
      second: '2-digit',
    },
  });
  const parts = Object.fromEntries(format.formatToParts(epochMs).map(({ type, value }) => [type, value]));
  const offset = String(parts['timeZoneName']).replace('GMT', '') || '+00:00';
  const time = `${parts['hour']}:${parts['minute']}:${parts['second']}`;
  return `${civilDateAt(epochMs, timeZone)}T${time}${offset}`;
}

/**
 * Civil dates, `YYYY-MM-DD`, years 0001 to 9999: the days of a wall calendar, without a time or a zone.
 * Strings of this form sort as their days do. There is no clock here: an instant is passed in.
 */

const FORM = /^(\d{4})-(\d{2})-(\d{2})$/;

const kept = new Map<string, Intl.DateTimeFormat>();

function calendarOf(timeZone: string): Intl.DateTimeFormat {
  let format = kept.get(timeZone);
  if (format === undefined) {
    const parts = { year: 'numeric', month: '2-digit', day: '2-digit', era: 'short' } as const;
    format = new Intl.DateTimeFormat('en-u-ca-gregory-nu-latn', { timeZone, ...parts });
    kept.set(timeZone, format);
  }
  return format;
}

/** Days in a month (1 to 12) of the Gregorian calendar. */
function daysIn(year: number, month: number): number {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  return [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
}

function written(year: number, month: number, day: number): string {
  if (year < 1 || year > 9999) throw new RangeError(`The year ${year} is outside 1 to 9999.`);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}

/** Year, month and day of a civil date; null when the text is none, such as `2026-02-29`. */
function read(date: string): { year: number; month: number; day: number } | null {
  const [, year = 0, month = 0, day = 0] = FORM.exec(date)?.map(Number) ?? [];
  return year >= 1 && day >= 1 && day <= daysIn(year, month) ? { year, month, day } : null;
}

/** Whether the text is a day of the calendar, written `YYYY-MM-DD`. */
export function isCivilDate(text: string): boolean {
  return read(text) !== null;
}

/**
 * The civil date that it is in a time zone (IANA name) at an instant, given in milliseconds since the epoch of
 * 1970 UTC. Throws a RangeError for an unknown zone, an instant that is none, or a year outside 1 to 9999.
 */
export function civilDateAt(epochMs: number, timeZone: string): string {
  const found = { year: 0, month: 0, day: 0, era: '' };
  for (const { type, value } of calendarOf(timeZone).formatToParts(epochMs)) {
    if (type === 'year' || type === 'month' || type === 'day') found[type] = Number(value);
    if (type === 'era') found.era = value;
  }
  return written(found.era.startsWith('B') ? 1 - found.year : found.year, found.month, found.day);
}

/** Below 0 when `a` is the earlier day, 0 when they are the same, above 0 when it is the later. */
export function compareDates(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}

/**
 * The same day of the month `months` later (below 0: earlier), or the month's last day where it is shorter:
 * 31 August and 6 months is 28 February. Throws a RangeError when `date` is no civil date or the year leaves
 * 1 to 9999.
 */
export function addMonths(date: string, months: number): string {
  const from = read(date);
  if (from === null) throw new RangeError(`"${date}" is not a date of the form YYYY-MM-DD.`);
  const count = from.year * 12 + from.month - 1 + months;
  const year = Math.floor(count / 12);
  const month = count - year * 12 + 1;
  return written(year, month, Math.min(from.day, daysIn(year, month)));
}

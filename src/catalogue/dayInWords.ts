/** A civil date as it is written in a language, such as `November 25, 2026`. */
const kept = new Map<string, Intl.DateTimeFormat>();

/** The date in words; a text that is no civil date of the form `YYYY-MM-DD` throws a RangeError. */
export function dayInWords(date: string, language: string): string {
  let format = kept.get(language);
  if (format === undefined) {
    format = new Intl.DateTimeFormat(language, { dateStyle: 'long', timeZone: 'UTC' });
    kept.set(language, format);
  }
  return format.format(epochMs(date));
}

/** Start of the day at 1970 UTC and after, or before, in milliseconds: days of a year that begins in March. */
function epochMs(date: string): number {
  const [year = Number.NaN, month = Number.NaN, day = Number.NaN] = date.split('-').map(Number);
  const fromMarch = (month + 9) % 12;
  const years = fromMarch > 9 ? year - 1 : year;
  const leapDays = Math.floor(years / 4) - Math.floor(years / 100) + Math.floor(years / 400);
  const days = 365 * years + leapDays + Math.floor((153 * fromMarch + 2) / 5) + day - 719_469;
  return days * 86_400_000;
}

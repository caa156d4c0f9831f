import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { civilDateAt } from '../../src/catalogue/civilDate.ts';
import { addDays, dayEndMs, dayStartMs, zonedText } from '../../src/catalogue/dayBounds.ts';

/** Among them zones whose summer time begins at midnight, and one that has left out a day. */
const ZONES = [
  ...['America/New_York', 'Europe/Berlin', 'Asia/Kathmandu', 'Pacific/Auckland', 'Pacific/Kiritimati'],
  ...['America/Santiago', 'America/Havana', 'Africa/Cairo', 'Asia/Beirut', 'Pacific/Apia', 'UTC'],
];
const date = fc
  .date({ min: new Date('1990-01-01T00:00:00Z'), max: new Date('2060-12-31T00:00:00Z'), noInvalidDate: true })
  .map((day) => day.toISOString().slice(0, 10));

describe('the ends of a civil day', () => {
  it('law: begins where Temporal says that the day begins, and ends a millisecond before the next', () => {
    fc.assert(
      fc.property(date, fc.constantFrom(...ZONES), (day, zone) => {
        // A day that Apia left out has no start of its own.
        fc.pre(!(zone === 'Pacific/Apia' && day === '2011-12-30'));
        const plain = Temporal.PlainDate.from(day);
        const start = (one: Temporal.PlainDate) => one.toZonedDateTime(zone).epochMilliseconds;
        expect(dayStartMs(day, zone)).toBe(start(plain));
        expect(civilDateAt(dayEndMs(day, zone), zone)).toBe(day);
        expect(dayEndMs(day, zone) + 1).toBe(dayStartMs(addDays(day, 1), zone));
      }),
      { numRuns: 200 },
    );
  });

  // Summer time in New York ended on 1 November 2026 at 02:00; in Santiago it began on 6 September 2026 at 00:00.
  it.each([
    ['2026-11-01', 'America/New_York', '2026-11-01T00:00:00-04:00', '2026-11-01T23:59:59-05:00', 25],
    ['2026-03-08', 'America/New_York', '2026-03-08T00:00:00-05:00', '2026-03-08T23:59:59-04:00', 23],
    ['2026-09-06', 'America/Santiago', '2026-09-06T01:00:00-03:00', '2026-09-06T23:59:59-03:00', 23],
    ['2026-07-01', 'UTC', '2026-07-01T00:00:00+00:00', '2026-07-01T23:59:59+00:00', 24],
  ])('%s in %s runs from %s to %s, %d hours', (day, zone, first, last, hours) => {
    expect(zonedText(dayStartMs(day, zone), zone)).toBe(first);
    expect(zonedText(dayEndMs(day, zone), zone)).toBe(last);
    expect((dayEndMs(day, zone) + 1 - dayStartMs(day, zone)) / 3_600_000).toBe(hours);
  });

  it('a day that the zone left out begins with the day after it', () => {
    expect(dayStartMs('2011-12-30', 'Pacific/Apia')).toBe(dayStartMs('2011-12-31', 'Pacific/Apia'));
  });
});

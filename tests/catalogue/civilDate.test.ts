import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import { addMonths, civilDateAt, compareDates, isCivilDate } from '../../src/catalogue/civilDate.ts';

/** West and east of Greenwich, by quarter hours, with and without summer time, and beyond UTC+12. */
const ZONES = ['America/New_York', 'Asia/Kathmandu', 'Pacific/Auckland'];

const date = fc
  .date({ min: new Date('0002-01-01T00:00:00Z'), max: new Date('9997-12-31T00:00:00Z'), noInvalidDate: true })
  .map((day) => day.toISOString().slice(0, 10));

describe('the civil date of an instant', () => {
  // A day ends at its own midnight, not at that of UTC; on 8 March 2026 New York begins summer time.
  test.each([
    ['2026-11-25T04:59:59.999Z', 'America/New_York', '2026-11-24'],
    ['2026-11-25T05:00:00.000Z', 'America/New_York', '2026-11-25'],
    ['2026-03-09T03:59:59.999Z', 'America/New_York', '2026-03-08'],
    ['2026-03-09T04:00:00.000Z', 'America/New_York', '2026-03-09'],
    ['2026-11-24T18:14:59.999Z', 'Asia/Kathmandu', '2026-11-24'],
    ['2026-11-24T18:15:00.000Z', 'Asia/Kathmandu', '2026-11-25'],
    ['2026-11-24T10:59:59.999Z', 'Pacific/Auckland', '2026-11-24'],
    ['2026-11-24T11:00:00.000Z', 'Pacific/Auckland', '2026-11-25'],
    ['2024-02-29T12:00:00.000Z', 'UTC', '2024-02-29'],
  ])('%s in %s is %s', (instant, zone, day) => {
    expect(civilDateAt(Date.parse(instant), zone)).toBe(day);
  });

  test('law: within one millisecond of either end of a day it is what Temporal says', () => {
    const edge = fc.tuple(date, fc.constantFrom(...ZONES), fc.constantFrom(-1, 0, 1));
    fc.assert(
      fc.property(edge, ([day, zone, offset]) => {
        const start = Temporal.PlainDate.from(day).toZonedDateTime(zone).epochMilliseconds;
        const expected = Temporal.Instant.fromEpochMilliseconds(start + offset).toZonedDateTimeISO(zone);
        expect(civilDateAt(start + offset, zone)).toBe(expected.toPlainDate().toString());
      }),
    );
  });

  test('is refused for an unknown zone, no instant, and a year that has no four digits', () => {
    expect(() => civilDateAt(0, 'Atlantis/Main')).toThrow(RangeError);
    expect(() => civilDateAt(Number.NaN, 'UTC')).toThrow(RangeError);
    expect(() => civilDateAt(Date.parse('-000001-06-01T00:00:00Z'), 'UTC')).toThrow('year -1');
  });
});

describe('a civil date', () => {
  test.each([
    '2026-02-29',
    '1900-02-29',
    '2026-13-01',
    '2026-00-10',
    '2026-04-31',
    '0000-01-01',
    '2026-1-1',
    '26-01-01',
    ' 2026-01-01',
    '2026-01-01T00:00',
    '',
  ])('%j is none', (text) => {
    expect(isCivilDate(text)).toBe(false);
  });

  test.each(['2024-02-29', '2000-02-29', '2026-12-31', '0001-01-01', '9999-12-31'])('%j is one', (text) => {
    expect(isCivilDate(text)).toBe(true);
  });

  test('law: every day of the calendar is one, and they sort as Temporal sorts them', () => {
    fc.assert(
      fc.property(date, date, (one, other) => {
        expect(isCivilDate(one)).toBe(true);
        expect(compareDates(one, other)).toBe(Temporal.PlainDate.compare(one, other));
      }),
    );
  });
});

describe('adding months', () => {
  test.each([
    ['2026-08-31', 6, '2027-02-28'],
    ['2023-08-31', 6, '2024-02-29'],
    ['2026-01-15', 24, '2028-01-15'],
    ['2026-03-31', -1, '2026-02-28'],
    ['2026-01-01', -1, '2025-12-01'],
  ])('%s and %i is %s', (from, months, to) => {
    expect(addMonths(from, months)).toBe(to);
  });

  test('law: it is what Temporal gives when it keeps within the month', () => {
    fc.assert(
      fc.property(date, fc.integer({ min: -12, max: 12 }), (from, months) => {
        expect(addMonths(from, months)).toBe(Temporal.PlainDate.from(from).add({ months }).toString());
      }),
    );
  });

  test('is refused for a text that is no date, and beyond the year 9999', () => {
    expect(() => addMonths('2026-02-30', 1)).toThrow('"2026-02-30"');
    expect(() => addMonths('9999-12-01', 1)).toThrow('year 10000');
  });
});

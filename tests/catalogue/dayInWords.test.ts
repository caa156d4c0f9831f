import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayInWords } from '../../src/catalogue/dayInWords.ts';

describe('a civil date in words', () => {
  it('is written as its language does', () => {
    expect(dayInWords('2026-11-25', 'en')).toBe('November 25, 2026');
    expect(dayInWords('2024-02-29', 'fr-CA')).toBe('29 février 2024');
  });

  it('is the day that a calendar gives', () => {
    const days = fc.date({
      min: new Date('0100-01-01'),
      max: new Date('9999-12-31'),
      noInvalidDate: true,
    });
    const format = new Intl.DateTimeFormat('en', { dateStyle: 'long', timeZone: 'UTC' });
    fc.assert(
      fc.property(days, (day) => {
        expect(dayInWords(day.toISOString().slice(0, 10), 'en')).toBe(format.format(day));
      }),
    );
  });
});

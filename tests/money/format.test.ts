import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toDecimal } from '../../src/money/decimal.ts';
import { formatMoney, formatPercent } from '../../src/money/format.ts';

/** No-break spaces of several kinds become plain ones. */
const plain = (text: string): string => text.replace(/[\u00a0\u202f]/g, ' ');

describe('an amount on a page', () => {
  // Common practice of each language.
  test.each([
    [114900, 'USD', 2, 'en', '$1,149.00'],
    [-1490, 'USD', 2, 'en', '-$14.90'],
    [31220, 'JPY', 0, 'en', '¥31,220'],
    [76030, 'KWD', 3, 'en', 'KWD 76.030'],
    [114900, 'EUR', 2, 'de', '1.149,00 €'],
    [Number.MAX_SAFE_INTEGER, 'USD', 2, 'en', '$90,071,992,547,409.91'],
  ])('%i %s with %i digits in %s is %s', (minor, currency, digits, language, text) => {
    expect(plain(formatMoney(minor, currency, digits, language))).toBe(text);
  });

  test('law: its figures are those of the decimal string', () => {
    fc.assert(
      fc.property(fc.maxSafeInteger(), (minor) => {
        const figures = formatMoney(minor, 'USD', 2, 'en').replace(/[$,]/g, '');
        expect(figures).toBe(toDecimal(minor, 2));
      }),
    );
  });

  test('is refused when it is not whole', () => {
    expect(() => formatMoney(0.5, 'USD', 2, 'en')).toThrow(RangeError);
  });
});

test.each([
  [55_000, 'en', '5.5%'],
  [55_000, 'de', '5,5 %'],
  [99_750, 'en', '9.975%'],
  [1, 'en', '0.0001%'],
  [0, 'en', '0%'],
])('%i parts per million in %s is %s', (ppm, language, text) => {
  expect(plain(formatPercent(ppm, language))).toBe(text);
});

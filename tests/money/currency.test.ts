import { expect, test } from 'vitest';
import { currencyDigits } from '../../src/money/currency.ts';

test.each([
  // ISO 4217 minor units (from memory).
  ['USD', 2],
  ['EUR', 2],
  ['GBP', 2],
  ['JPY', 0],
  ['KRW', 0],
  ['KWD', 3],
  ['BHD', 3],
])('%s has %i digits', (code, digits) => {
  expect(currencyDigits(code)).toBe(digits);
});

test.each(['usd', 'US', 'QQQ', '', '$'])('%j is no currency', (code) => {
  expect(currencyDigits(code)).toBeNull();
});

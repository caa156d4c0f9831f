import { describe, expect, it } from 'vitest';
import { plainNumber, plainPrice } from '../../../src/commands/importing/written.ts';

const usd = { code: 'USD', digits: 2 };

describe('a number of a spreadsheet', () => {
  it.each([
    ['48', '.', '48'],
    ['48.5', '.', '48.5'],
    ['1,149.50', '.', '1149.50'],
    ['48,5', ',', '48.5'],
    ['1.149,50', ',', '1149.50'],
    ['−2,25', ',', '-2.25'],
    ['1 149,50', ',', '1149.50'],
    ['48,5', '.', '48,5'],
    ['48.5', ',', '48.5'],
    ['51 mm', '.', '51 mm'],
    ['', '.', ''],
  ] as const)('%j with the sign %j is %j', (text, decimal, plain) => {
    expect(plainNumber(text, decimal)).toBe(plain);
  });
});

describe('a price of a spreadsheet', () => {
  it.each([
    ['149', '149.00'],
    ['149.5', '149.50'],
    ['$1,149.00', '1149.00'],
    ['USD 149.00', '149.00'],
    ['149.00 €', '149.00'],
    ['149.005', '149.005'],
    ['free', 'free'],
  ])('%j is %j', (text, price) => {
    expect(plainPrice(text, '.', usd)).toBe(price);
  });
});

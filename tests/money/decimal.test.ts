import { dinero, toDecimal as reference } from 'dinero.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseDecimal, toDecimal } from '../../src/money/decimal.ts';

const digits = fc.constantFrom(0, 2, 3, 4);

describe('reading a decimal string', () => {
  test.each([
    ['149.00', 2, 14900],
    ['149', 2, 14900],
    ['6.5', 2, 650],
    ['-10.00', 2, -1000],
    ['-0.00', 2, 0],
    ['18950', 0, 18950],
    ['45.755', 3, 45755],
    ['5.5', 4, 55000],
    ['90071992547409.91', 2, Number.MAX_SAFE_INTEGER],
  ])('%s with %i digits is %i', (text, places, minor) => {
    expect(parseDecimal(text, places)).toEqual({ ok: true, minor });
  });

  test.each([
    ['', 2, 'empty', null],
    ['  ', 2, 'empty', null],
    ['149,00', 2, 'comma', '149.00'],
    ['149,000', 2, 'comma', null],
    ['1,149.00', 2, 'form', null],
    ['$149.00', 2, 'form', null],
    [' 149.00', 2, 'form', '149.00'],
    ['+1.00', 2, 'form', null],
    ['007', 2, 'form', null],
    ['.50', 2, 'form', null],
    ['5.', 2, 'form', null],
    ['1e3', 2, 'form', null],
    ['١٤٩', 2, 'form', null],
    ['149.005', 2, 'too-many-decimals', null],
    ['149.000', 2, 'too-many-decimals', '149.00'],
    ['-18950.0', 0, 'too-many-decimals', '-18950'],
    ['18950.5', 0, 'too-many-decimals', null],
    ['90071992547409.92', 2, 'too-large', null],
  ])('%j with %i digits is a fault: %s', (found, places, code, meant) => {
    expect(parseDecimal(found, places)).toEqual({ ok: false, fault: { code, digits: places, found, meant } });
  });

  test('law: parse(write(m)) = m for every safe integer', () => {
    fc.assert(
      fc.property(fc.maxSafeInteger(), digits, (minor, places) => {
        expect(parseDecimal(toDecimal(minor, places), places)).toEqual({ ok: true, minor: minor + 0 });
      }),
    );
  });

  test('law: any text is read or refused, and what is meant is read', () => {
    const texts = fc.oneof(fc.string(), fc.stringMatching(/^[-+ ]?[0-9.,]{0,9}$/));
    fc.assert(
      fc.property(texts, digits, (text, places) => {
        const result = parseDecimal(text, places);
        if (result.ok) expect(Number.isSafeInteger(result.minor)).toBe(true);
        else if (result.fault.meant !== null) expect(parseDecimal(result.fault.meant, places).ok).toBe(true);
      }),
    );
  });
});

describe('writing a decimal string', () => {
  test.each([
    [14900, 2, '149.00'],
    [-5, 2, '-0.05'],
    [0, 3, '0.000'],
    [18950, 0, '18950'],
    [-45755, 3, '-45.755'],
  ])('%i with %i digits is %s', (minor, places, text) => {
    expect(toDecimal(minor, places)).toBe(text);
  });

  test('law: it is what dinero.js writes', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), fc.constantFrom(0, 2, 3), (minor, exponent) => {
        const currency = { code: 'XTS', base: 10, exponent };
        expect(toDecimal(minor, exponent)).toBe(reference(dinero({ amount: minor, currency })));
      }),
    );
  });
});

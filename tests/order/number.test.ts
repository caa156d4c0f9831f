import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  checkDigits,
  isOrderNumber,
  NUMBER_BYTES,
  orderNumber,
  readNumber,
  showNumber,
} from '../../src/order/number.ts';

const random = fc.uint8Array({ minLength: NUMBER_BYTES, maxLength: NUMBER_BYTES });
const numbers = random.map(orderNumber);

describe('check digits', () => {
  it.each([
    // ISO 7064, MOD 97-10: the example of the standard, from memory
    ['794', '44'],
    // ISO 13616, the example GB82 WEST 1234 5698 7654 32 with its letters as numbers: W 32, E 14, S 28, T 29, G 16, B 11
    ['3214282912345698765432' + '1611', '82'],
  ])('of %s are %s', (digits, check) => {
    expect(checkDigits(digits)).toBe(check);
  });
});

describe('an order number', () => {
  it('is twelve digits that check', () => {
    fc.assert(fc.property(numbers, (number) => isOrderNumber(number)));
  });

  it('betrays any one wrong digit and any two neighbours swapped', () => {
    fc.assert(
      fc.property(numbers, fc.nat(11), fc.integer({ min: 1, max: 9 }), (number, at, shift) => {
        const digit = String((Number(number[at]) + shift) % 10);
        expect(isOrderNumber(number.slice(0, at) + digit + number.slice(at + 1))).toBe(false);
        const [one = '', two = ''] = number.slice(at, at + 2);
        const swapped = number.slice(0, at) + two + one + number.slice(at + 2);
        expect(isOrderNumber(swapped)).toBe(swapped === number);
      }),
    );
  });

  it('is read back as it is shown, with spaces or hyphens', () => {
    fc.assert(
      fc.property(numbers, (number) => {
        expect(readNumber(showNumber(number))).toBe(number);
        expect(readNumber(` ${showNumber(number).replaceAll('-', ' ')} `)).toBe(number);
      }),
    );
  });

  it('is shown in groups of four', () => {
    expect(showNumber('482109375562')).toBe('4821-0937-5562');
  });

  it('is not made from too little chance', () => {
    expect(() => orderNumber(new Uint8Array(8))).toThrow(RangeError);
  });

  it('is no other text', () => {
    for (const text of ['', '12', '0000000000', '4821-0937-556x', '1'.repeat(12)])
      expect(readNumber(text)).toBeNull();
  });
});

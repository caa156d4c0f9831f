import fc from 'fast-check';
import decode from 'qr/decode.js';
import { describe, expect, it } from 'vitest';
import { orderNumber } from '../../src/order/number.ts';
import { qrCode, readSlip, slipText } from '../../src/order/slip.ts';

const slips = fc.record({
  number: fc.uint8Array({ minLength: 16, maxLength: 16 }).map(orderNumber),
  digest: fc.uint8Array({ minLength: 32, maxLength: 32 }).map((bytes) => Buffer.from(bytes).toString('hex')),
});

/** Four dots a module, grey levels as a camera gives them. */
function picture(modules: readonly (readonly boolean[])[]) {
  const size = modules.length * 4;
  const data = new Uint8Array(size * size * 4).map((_, at) => {
    const dot = Math.floor(at / 4);
    const dark = modules[Math.floor(Math.floor(dot / size) / 4)]?.[Math.floor((dot % size) / 4)];
    return at % 4 === 3 || !dark ? 255 : 0;
  });
  return { width: size, height: size, data };
}

describe('the slip', () => {
  it('is read back from its text', () => {
    fc.assert(
      fc.property(slips, (slip) => {
        expect(readSlip(slipText(slip))).toEqual(slip);
      }),
    );
  });

  it('is read back from its QR code by an independent decoder', () => {
    fc.assert(
      fc.property(slips, (slip) => {
        expect(decode(picture(qrCode(slipText(slip))))).toBe(slipText(slip));
      }),
      { numRuns: 10 },
    );
  });

  it('with a wrong digit of the number is none', () => {
    fc.assert(
      fc.property(slips, (slip) => {
        const text = slipText(slip).replace(
          slip.number,
          slip.number.replace(/\d/, (digit) => String((Number(digit) + 1) % 10)),
        );
        expect(readSlip(text)).toBeNull();
      }),
    );
  });
});

describe('a QR code', () => {
  it('takes printable ASCII only', () => {
    for (const text of ['', 'é', 'a\nb']) expect(() => qrCode(text)).toThrow(RangeError);
  });
});

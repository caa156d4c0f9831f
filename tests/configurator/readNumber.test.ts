import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readNumber } from '../../src/configurator/readNumber.ts';
import { writePower } from '../../src/configurator/write.ts';

/** What each entry is read as: the forms that prescriptions are written in, common practice. */
const READ: readonly (readonly [text: string, value: number])[] = [
  ['-3.25', -3.25],
  ['\u22123,25', -3.25],
  ['\u20130.75', -0.75],
  ['+2', 2],
  ['+ 2.50', 2.5],
  [' 62 ', 62],
  ['62 mm', 62],
  ['170\u00b0', 170],
  ['-.75', -0.75],
  ['1.', 1],
  ['0', 0],
  ['-0.00', 0],
  ['pl', 0],
  ['Plano', 0],
  ['DS', 0],
  ['sph.', 0],
  ['\u2014', 0],
];

const UNREAD = [
  'abc',
  '1.2.3',
  '1,234.5',
  '--1',
  '3..25',
  '+',
  '3-',
  '1e3',
  'NaN',
  'Infinity',
  '\u0663',
  '31/32',
  '2 5',
];

describe('readNumber', () => {
  it.each(READ)('reads "%s" as %d', (text, value) => {
    expect(readNumber(text)).toMatchObject({ kind: 'number', value });
  });

  it.each(UNREAD)('does not guess what "%s" means', (text) => {
    expect(readNumber(text)).toEqual({ kind: 'unread' });
  });

  it('takes spaces for a blank', () => {
    expect(readNumber(' \t')).toEqual({ kind: 'blank' });
  });

  it('reads back every power as the worksheet writes it', () => {
    fc.assert(
      fc.property(fc.integer({ min: -240, max: 240 }), (eighths) => {
        // Powers go in eighths, which two decimals hold only for quarters.
        const valueD = (eighths * 2) / 8;
        expect(readNumber(writePower(valueD))).toMatchObject({ kind: 'number', value: valueD });
      }),
    );
  });

  it('reads a comma as a point and any minus as a minus', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 99_999 }),
        fc.constantFrom('-', '\u2212', '\u2013'),
        (hundredths, minus) => {
          const text = (hundredths / 100).toFixed(2);
          expect(readNumber(`${minus}${text.replace('.', ',')}`)).toEqual(readNumber(`-${text}`));
        },
      ),
    );
  });

  it('never gives a number that is not finite', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[-+.,0-9 ]{0,30}$/)), (text) => {
        const reading = readNumber(text);
        expect(reading.kind !== 'number' || Number.isFinite(reading.value)).toBe(true);
      }),
    );
  });
});

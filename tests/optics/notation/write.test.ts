import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readEye, readPrescription } from '../../../src/optics/notation/readPrescription.ts';
import {
  writeDioptres,
  writeEye,
  writePower,
  writePrescription,
  writePrism,
} from '../../../src/optics/notation/write.ts';
import { BASES } from '../../../src/optics/prismBase.ts';
import { addD, power } from '../realistic.ts';

const prism = fc.record({
  amount: fc.integer({ min: 1, max: 80 }).map((quarter) => quarter / 4),
  base: fc.oneof(fc.constantFrom(...BASES), fc.integer({ min: 0, max: 359 })),
});
const eye = fc.record({
  power: fc.option(power, { freq: 10 }),
  addD: fc.option(addD),
  prisms: fc.array(prism, { maxLength: 3 }),
});

describe('a written power', () => {
  it('has two decimals and a sign, plano and DS where they belong, and an axis of 180 for 0', () => {
    expect([-2.25, 1, 0, -0.001, 12.5].map(writeDioptres)).toEqual([
      '-2.25',
      '+1.00',
      '0.00',
      '0.00',
      '+12.50',
    ]);
    expect(writePower({ sphereD: -2.25, cylinderD: -0.75, axisDeg: 90 })).toBe('-2.25 -0.75 x 90');
    expect(writePower({ sphereD: -2.25, cylinderD: 0, axisDeg: 180 })).toBe('-2.25 DS');
    expect(writePower({ sphereD: 0, cylinderD: 0, axisDeg: 180 })).toBe('plano');
    expect(writePower({ sphereD: 0, cylinderD: 0.5, axisDeg: 0.2 })).toBe('plano +0.50 x 180');
  });

  it('is followed by add and prism', () => {
    const prisms = [
      { amount: 1.5, base: 'in' },
      { amount: 2.5, base: 37 },
    ] as const;
    const written = writeEye({ power: { sphereD: 1, cylinderD: 0, axisDeg: 180 }, addD: 2, prisms });
    expect(written).toBe('+1.00 DS add +2.00 1.50 BI 2.50 @ 37');
    expect(writePrism({ amount: 3, base: 'down' })).toBe('3.00 BD');
    expect(writeEye({ power: null, addD: null, prisms: [] })).toBe('balance');
  });
});

describe('what is written', () => {
  it('reads back as the same eye', () => {
    fc.assert(
      fc.property(eye, (one) => {
        expect(readEye(writeEye(one))).toEqual({ ok: true, value: one });
      }),
    );
  });

  it('reads back as the same pair, also with decimal commas', () => {
    fc.assert(
      fc.property(fc.record({ right: fc.option(eye), left: fc.option(eye) }), (pair) => {
        fc.pre(pair.right !== null || pair.left !== null);
        const written = writePrescription(pair);
        expect(readPrescription(written)).toEqual({ ok: true, value: pair });
        expect(readPrescription(written.replaceAll('.', ','))).toEqual({ ok: true, value: pair });
      }),
    );
  });
});

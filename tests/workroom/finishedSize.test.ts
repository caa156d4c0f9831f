import fc from 'fast-check';
import { expect, test } from 'vitest';
import { finishedSize } from '../../src/workroom/finishedSize.ts';

const ring = (radiusMm: number) => ({ radiiMm: Array.from({ length: 360 }, () => radiusMm) });

test('a ring of 25 mm has a circumference of 157.08 mm', () => {
  // C: check value of the trace records, CIRC 157.08
  expect(finishedSize(ring(25), 0).outlineCircumferenceMm).toBeCloseTo(157.08, 2);
});

test('what is added to the circumference of a ring makes the ring of that circumference', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 15, max: 40, noNaN: true }),
      fc.double({ min: -2, max: 2, noNaN: true }),
      (radiusMm, addedMm) => {
        const size = finishedSize(ring(radiusMm), addedMm);
        expect(size.circumferenceMm / size.aMm).toBeCloseTo(Math.PI, 3);
        expect(size.aMm).toBeCloseTo(size.bMm, 9);
      },
    ),
  );
});

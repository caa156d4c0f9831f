import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastFittingHeightMm, readingZone } from '../../src/optics/readingZone.ts';
import { outline, ring } from './frames.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

const zone = { corridorMm: 14, insetXMm: 2.5, zoneWidthMm: 12, zoneHeightMm: 8 };

describe('the least fitting height', () => {
  it('for a 14 mm corridor is 18', () => {
    // From memory: corridor and about 4 mm of reading zone
    expect(leastFittingHeightMm(14)).toBe(18);
    expect(leastFittingHeightMm(11, 5)).toBe(16);
  });
});

describe('a reading zone', () => {
  it('in a large round lens is whole, and its places are told', () => {
    const found = readingZone({ ...zone, outline: ring(60), cross: { xMm: 3, yMm: 4 } });
    expect(found.corridorEnd).toEqual({ xMm: 5.5, yMm: -10 });
    expectNear(found.share, 1, 1e-9, '');
    expectNear(found.widthMm, 12, 1e-9, 'mm');
    expectNear(found.belowEndMm, Math.sqrt(900 - 5.5 ** 2) - 10, 0.01, 'mm');
    expectNear(found.aboveCrossMm, Math.sqrt(900 - 9) - 4, 0.01, 'mm');
    expect([found.crossInside, found.corridorEndInside]).toEqual([true, true]);
  });

  it('below a shallow lens is gone', () => {
    const found = readingZone({ ...zone, outline: ring(26), cross: { xMm: 0, yMm: 0 } });
    expect(found).toMatchObject({ corridorEndInside: false, leftMm2: 0, widthMm: 0, belowEndMm: 0 });
  });

  it('loses with a longer corridor and never has more than all', () => {
    fc.assert(
      fc.property(
        outline,
        real(-3, 3),
        real(0, 6),
        real(9, 18),
        real(0.1, 4),
        (lens, xMm, yMm, corridorMm, longer) => {
          const at = (length: number) =>
            readingZone({ ...zone, outline: lens, cross: { xMm, yMm }, corridorMm: length });
          const [short, long] = [at(corridorMm), at(corridorMm + longer)];
          expect(short.share).toBeLessThanOrEqual(1 + 1e-9);
          expect(long.leftMm2).toBeLessThanOrEqual(short.leftMm2 + 1e-6);
          expect(long.belowEndMm).toBeLessThanOrEqual(short.belowEndMm + 1e-9);
        },
      ),
    );
  });
});

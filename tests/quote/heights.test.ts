import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitInHeight } from '../../src/quote/heights.ts';

const tenths = (from: number, to: number) => fc.integer({ min: from * 10, max: to * 10 }).map((n) => n / 10);
const both = fc.record({ right: tenths(15, 30), left: tenths(15, 30) });
const bMm = tenths(30, 50);

describe('heights in another lens', () => {
  it('are as far above the middle of it, to a quarter of a millimeter', () => {
    fc.assert(
      fc.property(both, both, bMm, bMm, (fittingHeight, segmentHeight, from, to) => {
        const there = fitInHeight({ pd: 63, fittingHeight, segmentHeight }, from, to);
        expect(there.pd).toBe(63);
        for (const eye of ['right', 'left'] as const)
          for (const [was, is] of [
            [fittingHeight, there.fittingHeight],
            [segmentHeight, there.segmentHeight],
          ]) {
            const movedMm = (is?.[eye] ?? 0) - to / 2 - ((was?.[eye] ?? 0) - from / 2);
            expect(Math.abs(movedMm)).toBeLessThanOrEqual(0.25 + 1e-9);
          }
      }),
    );
  });

  it('stay to the last digit where the lens is as high', () => {
    const fit = { fittingHeight: { right: 19.3, left: 19.7 } };
    expect(fitInHeight(fit, 44, 44)).toEqual(fit);
  });

  it('are not known where nobody could measure them', () => {
    expect(fitInHeight({ fittingHeight: { right: 6, left: 6 } }, 44, 29)).toEqual({});
  });
});

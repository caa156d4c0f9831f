import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawingsView } from '../../../src/quote/view/drawings.ts';
import { anyPackage, situationOf } from './situations.ts';

describe('the drawings of a pair', () => {
  it('are plain data: nothing is lost on the way from the worker, and no number is missing', () => {
    fc.assert(
      fc.property(anyPackage, anyPackage, (change, other) => {
        const view = drawingsView(situationOf(change), situationOf(other));
        // NaN and Infinity would come back as null, undefined not at all.
        expect(JSON.parse(JSON.stringify(view))).toEqual(view);
      }),
      { numRuns: 40 },
    );
  });

  it('fit in 16 kB', () => {
    fc.assert(
      fc.property(anyPackage, (change) => {
        expect(JSON.stringify(drawingsView(situationOf(change))).length).toBeLessThan(16_000);
      }),
      { numRuns: 20 },
    );
  });
});

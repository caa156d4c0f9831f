import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frontLayout } from '../../../src/islands/drawings/frontLayout.ts';
import { frontView } from '../../../src/quote/view/front.ts';
import { anyPackage, situationOf } from '../../quote/view/situations.ts';

describe('the field of a pair from the front', () => {
  it('holds both boxes and both blanks', () => {
    fc.assert(
      fc.property(anyPackage, (change) => {
        const view = frontView(situationOf(change));
        const { left, top, width, height } = frontLayout(view);
        for (const { blank, centreXMm } of [view.right, view.left]) {
          const x = centreXMm + (blank?.middle.xMm ?? 0);
          const y = -(blank?.middle.yMm ?? 0);
          const r = (blank?.usedMm ?? 0) / 2;
          expect(Math.min(x - r, centreXMm - view.aMm / 2)).toBeGreaterThan(left);
          expect(Math.max(x + r, centreXMm + view.aMm / 2)).toBeLessThan(left + width);
          expect(Math.min(y - r, -view.bMm / 2)).toBeGreaterThan(top);
          expect(Math.max(y + r, view.bMm / 2)).toBeLessThan(top + height);
        }
      }),
      { numRuns: 40 },
    );
  });
});

import fc from 'fast-check';
import { describe, it } from 'vitest';
import { radiusAt } from '../../../src/optics/outline.ts';
import { outlineFlat } from '../../../src/quote/view/points.ts';
import { outline } from '../../optics/frames.ts';
import { expectNear } from '../../optics/near.ts';

describe('the points that an outline is drawn by', () => {
  it('lie on it, to the hundredth that they are rounded to', () => {
    fc.assert(
      fc.property(outline, (lens) => {
        const flat = outlineFlat(lens);
        for (let i = 0; i < flat.length; i += 2) {
          const [x = 0, y = 0] = [flat[i], flat[i + 1]];
          const deg = (Math.atan2(y, x) * 180) / Math.PI;
          expectNear(Math.hypot(x, y), radiusAt(lens, deg), 0.02, 'mm');
        }
      }),
      { numRuns: 30 },
    );
  });
});

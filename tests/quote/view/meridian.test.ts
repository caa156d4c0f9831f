import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { radiusAt } from '../../../src/optics/outline.ts';
import { meridianChord } from '../../../src/quote/view/meridian.ts';
import { outline, ring } from '../../optics/frames.ts';
import { expectNear } from '../../optics/near.ts';

describe('the stretch of a meridian in a lens', () => {
  it('ends on the outline both ways', () => {
    const direction = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });
    const inner = fc.record({ xMm: fc.integer({ min: -8, max: 8 }), yMm: fc.integer({ min: -8, max: 8 }) });
    fc.assert(
      fc.property(outline, inner, direction, (lens, origin, turn) => {
        const reach = meridianChord(lens, origin, turn);
        if (reach === null) throw new Error('A line through the lens meets its outline.');
        for (const s of [reach.from, reach.to]) {
          const [x, y] = [origin.xMm + s * Math.cos(turn), origin.yMm + s * Math.sin(turn)];
          expectNear(Math.hypot(x, y), radiusAt(lens, (Math.atan2(y, x) * 180) / Math.PI), 1e-6, 'mm');
        }
      }),
      { numRuns: 60 },
    );
  });

  it('is a diameter through the middle of a circle', () => {
    const reach = meridianChord(ring(50), { xMm: 0, yMm: 0 }, 0.3);
    expectNear((reach?.to ?? 0) - (reach?.from ?? 0), 50, 0.01, 'mm');
  });

  it('is none where the line passes the lens by', () => {
    expect(meridianChord(ring(50), { xMm: 0, yMm: 30 }, 0)).toBeNull();
  });
});

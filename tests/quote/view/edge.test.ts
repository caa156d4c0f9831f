import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edgeView, fromNoseDeg } from '../../../src/quote/view/edge.ts';
import { expectNear } from '../../optics/near.ts';
import { anyPackage, mirroredPackage, situationOf } from './situations.ts';

describe('the thickness round the rim', () => {
  it('stays between the thinnest and the thickest that the answer names', () => {
    fc.assert(
      fc.property(anyPackage, (change) => {
        const view = edgeView(situationOf(change));
        if (view === null) return;
        for (const { mm, thickest, thinnest } of [view.right, view.left]) {
          expect(Math.max(...mm)).toBeLessThanOrEqual(thickest.mm + 0.01);
          expect(Math.min(...mm)).toBeGreaterThanOrEqual(thinnest.mm - 0.01);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('passes the thickest place at the angle that is named', () => {
    fc.assert(
      fc.property(anyPackage, (change) => {
        const view = edgeView(situationOf(change));
        if (view === null) return;
        for (const { mm, thickest } of [view.right, view.left]) {
          const near = mm[Math.round(thickest.fromNoseDeg / view.stepDeg) % mm.length] ?? 0;
          // Up to a degree beside the top of the curve, which is steep where an edge of no real pair is centimetres thick.
          expectNear(near, thickest.mm, Math.max(0.15, thickest.mm / 100), 'mm');
        }
      }),
      { numRuns: 40 },
    );
  });

  it('is one curve for mirrored eyes', () => {
    fc.assert(
      fc.property(mirroredPackage, (change) => {
        const view = edgeView(situationOf(change));
        if (view === null) return;
        view.right.mm.forEach((mm, i) => {
          expectNear(view.left.mm[i] ?? 0, mm, 0.011, 'mm');
        });
      }),
      { numRuns: 40 },
    );
  });
});

describe('an angle told from the nose', () => {
  it('is told back by the same turn', () => {
    for (const eye of ['right', 'left'] as const)
      for (let deg = 0; deg < 360; deg += 15) expect(fromNoseDeg(eye, fromNoseDeg(eye, deg))).toBe(deg);
  });
});

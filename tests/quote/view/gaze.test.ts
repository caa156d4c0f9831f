import { describe, expect, it } from 'vitest';
import { gazeView } from '../../../src/quote/view/gaze.ts';
import { situationOf } from './situations.ts';

const strong = {
  prescription: { right: { sphere: 6 }, left: { sphere: 6 }, vertexDistance: 12, issued: '2026-06-01' },
};

describe('the gaze figure', () => {
  it('is not computed for a design whose zones decide', () => {
    const change = {
      fit: { fittingHeight: { right: 25, left: 25 } },
      lenses: { use: 'all', design: 'long' },
    } as const;
    expect(gazeView(situationOf(change))).toEqual({ computed: false, because: 'design' });
  });

  it('is not computed for lenses without power', () => {
    const change = { prescription: null, lenses: { use: 'none', design: 'none' } } as const;
    expect(gazeView(situationOf(change))).toEqual({ computed: false, because: 'no-power' });
  });

  it('waits for a lens', () => {
    const nothing = situationOf({ prescription: { right: {}, left: {} } });
    expect(gazeView(nothing)).toEqual({ computed: false, because: 'no-lens' });
  });

  it('mirrors in equal eyes, and names the narrowest of all its directions', () => {
    const view = gazeView(situationOf(strong));
    if (!view.computed) throw new Error('It is single vision.');
    for (const { directionDeg, angleDeg } of view.right) {
      const mirrored = view.left.find((one) => (one.directionDeg + directionDeg) % 360 === 180);
      expect(mirrored?.angleDeg).toBe(angleDeg);
    }
    expect(view.leastDeg).toBe(Math.min(...[...view.right, ...view.left].map(({ angleDeg }) => angleDeg)));
    expect(view.leastDeg).toBeLessThan(view.largestDeg);
  });
});

import { describe, it } from 'vitest';
import { lensAt } from '../../../src/quote/view/thickness.ts';
import { expectNear } from '../../optics/near.ts';

describe('a lens at a place', () => {
  it('is as thick as its surfaces say', () => {
    const surfaces = {
      front: { radiusMm: Number.POSITIVE_INFINITY, conic: 0 },
      back: {
        generatingRadiusMm: -52.3,
        revolvedRadiusMm: -52.3,
        generatingMeridianDeg: 0,
        tiltSlopeX: 0,
        tiltSlopeY: 0,
      },
      centreThicknessMm: 4.98,
      profile: null,
    };
    const at = lensAt({ surfaces }, { ne: 1.523 })(20, 0);
    // TIO 2023: crown 1.523, plano-convex, r 52.3, semi-aperture 20: sag 3.98, centre 4.98, edge 1.0.
    expectNear(at.thicknessMm, 1, 0.01, 'mm');
    expectNear(at.frontMm, 0, 1e-9, 'mm');
  });
});

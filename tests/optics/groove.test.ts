import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { grooveShoulder, leastGroovedEdgeMm } from '../../src/optics/groove.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

describe('a groove', () => {
  it('of 0.6 in the middle with shoulders of 0.6 needs an edge of 1.8', () => {
    // Common practice: 1.8 to 2.2 at the groove
    const groove = { widthMm: 0.6, shareFromFront: 0.5, leastShoulderMm: 0.6 };
    expectNear(leastGroovedEdgeMm(groove), 1.8, 1e-12, 'mm');
    expect(grooveShoulder([3, 1.6, 2], groove)).toEqual({
      leastMm: expect.closeTo(0.5, 9),
      atDeg: 120,
      missingMm: expect.closeTo(0.1, 9),
    });
  });

  it('just holds in the least edge that is named for it', () => {
    fc.assert(
      fc.property(
        real(0.3, 1),
        real(0.2, 0.8),
        real(0.3, 1.5),
        (widthMm, shareFromFront, leastShoulderMm) => {
          const groove = { widthMm, shareFromFront, leastShoulderMm };
          const edge = leastGroovedEdgeMm(groove);
          expectNear(grooveShoulder([edge, edge + 1], groove).missingMm, 0, 1e-9, 'mm');
          expectNear(
            grooveShoulder([edge - 0.1], groove).missingMm,
            0.1 * Math.min(shareFromFront, 1 - shareFromFront),
            1e-9,
            'mm',
          );
        },
      ),
    );
  });
});

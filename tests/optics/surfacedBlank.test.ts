import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blankNeeded } from '../../src/optics/blank.ts';
import { enclosingCircle } from '../../src/optics/enclosingCircle.ts';
import { surfacedBlank } from '../../src/optics/surfacedBlank.ts';
import { outline, ring } from './frames.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

describe('a surfaced blank with its optical centre moved', () => {
  it('is as small as the lens where the centre may be moved far enough', () => {
    const blank = surfacedBlank(ring(50), { xMm: 4, yMm: 3 }, 6);
    expectNear(blank.neededMm, 52, 1e-6, 'mm');
    expectNear(blank.movedCentre.xMm, 4, 1e-6, 'mm');
    expectNear(blank.movedCentre.yMm, 3, 1e-6, 'mm');
  });

  it('is short of that by twice what the move lacks', () => {
    expectNear(surfacedBlank(ring(50), { xMm: 6, yMm: 8 }, 4).neededMm, 50 + 2 * 6 + 2, 1e-3, 'mm');
  });

  it('without any move is the exact blank of the lens', () => {
    fc.assert(
      fc.property(outline, real(-6, 6), real(-6, 6), (lens, xMm, yMm) => {
        const reference = { xMm, yMm };
        expectNear(
          surfacedBlank(lens, reference, 0).neededMm,
          blankNeeded({ outline: lens, reference }).neededMm,
          1e-9,
          'mm',
        );
      }),
    );
  });

  it('shrinks with the room to move, never below the smallest circle, and no tried move beats it', () => {
    fc.assert(
      fc.property(
        outline,
        real(-6, 6),
        real(-6, 6),
        real(0.5, 8),
        real(0, 6.28),
        (lens, xMm, yMm, room, angle) => {
          const reference = { xMm, yMm };
          const blank = surfacedBlank(lens, reference, room);
          expect(Math.hypot(blank.movedCentre.xMm, blank.movedCentre.yMm)).toBeLessThanOrEqual(room + 1e-9);
          expect(blank.neededMm).toBeGreaterThanOrEqual(2 * enclosingCircle(lens).radiusMm + 2 - 1e-6);
          expect(blank.neededMm).toBeLessThanOrEqual(
            surfacedBlank(lens, reference, room / 2).neededMm + 1e-6,
          );
          const offset = { xMm: room * Math.cos(angle), yMm: room * Math.sin(angle) };
          expect(blankNeeded({ outline: lens, reference, offset }).neededMm).toBeGreaterThan(
            blank.neededMm - 0.01,
          );
        },
      ),
      { numRuns: 50 },
    );
  });
});

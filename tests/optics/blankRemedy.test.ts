import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blankNeeded } from '../../src/optics/blank.ts';
import { coveredPds, coveredRange, largestFrame } from '../../src/optics/blankRemedy.ts';
import { outline, ring } from './frames.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

const round = { outline: ring(50), reference: { xMm: 8, yMm: 0 } };

describe('the PDs that a blank covers', () => {
  it('reach 4 mm either way for a round lens 8 mm smaller than the blank less 2 to edge', () => {
    expect(coveredRange(round, 60)).toEqual({
      leastXMm: expect.closeTo(-4, 6),
      mostXMm: expect.closeTo(4, 6),
    });
    // A 50, DBL 20: (A + DBL)/2 = 35
    const pds = { leastMm: expect.closeTo(31, 6), mostMm: expect.closeTo(39, 6) };
    expect(coveredPds(round, 60, 1, 35)).toEqual(pds);
    expect(coveredPds(round, 60, -1, 35)).toEqual(pds);
  });

  it('move with the offset of the blank, and may lie all on one side', () => {
    fc.assert(
      fc.property(outline, real(-20, 20), real(62, 80), (lens, offsetX, usedMm) => {
        const plain = coveredRange({ outline: lens, reference: { xMm: 0, yMm: 0 } }, usedMm);
        const offset = { xMm: offsetX, yMm: 0 };
        const moved = coveredRange({ outline: lens, reference: { xMm: 0, yMm: 0 }, offset }, usedMm);
        fc.pre(plain !== null && plain.mostXMm - plain.leastXMm > 0.5);
        expectNear(moved?.leastXMm ?? Number.NaN, plain.leastXMm + offsetX, 1e-6, 'mm');
        expectNear(moved?.mostXMm ?? Number.NaN, plain.mostXMm + offsetX, 1e-6, 'mm');
      }),
    );
  });

  it('are none where the blank is smaller than the lens', () => {
    expect(coveredRange(round, 51)).toBeNull();
    expect(coveredPds(round, 51, 1, 35)).toBeNull();
  });

  it('are covered at both ends and not a little beyond', () => {
    fc.assert(
      fc.property(outline, real(-6, 6), real(60, 80), (lens, yMm, usedMm) => {
        const question = { outline: lens, reference: { xMm: 0, yMm } };
        const range = coveredRange(question, usedMm);
        if (range === null) {
          expect(blankNeeded(question).neededMm).toBeGreaterThan(usedMm);
          return;
        }
        const need = (xMm: number) => blankNeeded({ ...question, reference: { xMm, yMm } }).neededMm;
        for (const [end, out] of [
          [range.leastXMm, -0.01],
          [range.mostXMm, 0.01],
        ] as const) {
          expectNear(need(end), usedMm, 1e-6, 'mm');
          expect(need(end + out)).toBeGreaterThan(usedMm);
        }
      }),
    );
  });
});

describe('the largest frame that a blank covers', () => {
  const wearer = { monocularPdMm: 27, nasal: 1, dblMm: 20 } as const;

  it('is the frame itself where the blank is large enough', () => {
    // 50 + 2 x 8 + 2 = 68 is just enough.
    for (const usedMm of [75, 68])
      expect(largestFrame(round, usedMm, wearer)).toEqual({ scale: 1, aMm: expect.closeTo(50, 9) });
  });

  it('is smaller where it is not: a round lens 8 mm in needs 68', () => {
    // A = a, decentration (a + 20)/2 - 27: a + 2 dec + 2 = 2a - 32 = 64 at a = 48; the height stays at B/2 above.
    const answer = largestFrame({ outline: ring(50), reference: { xMm: 8, yMm: 0 } }, 64, wearer);
    expect(answer?.aMm).toBeLessThan(49);
    expect(answer?.aMm).toBeGreaterThan(47);
  });

  it('is none where even half the size is too large', () => {
    expect(largestFrame(round, 20, wearer)).toBeNull();
  });

  it('just uses up the blank', () => {
    fc.assert(
      fc.property(outline, real(26, 33), real(50, 66), (lens, monocularPdMm, usedMm) => {
        const question = { outline: lens, reference: { xMm: 4, yMm: 2 } };
        const answer = largestFrame(question, usedMm, { monocularPdMm, nasal: 1, dblMm: 18 });
        fc.pre(answer !== null && answer.scale < 1);
        const again = largestFrame(question, usedMm + 0.5, { monocularPdMm, nasal: 1, dblMm: 18 });
        expect(again?.scale).toBeGreaterThan(answer.scale);
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  crossingFault,
  type Demand,
  holeDemand,
  shortfalls,
  strictest,
} from '../../src/optics/centreThickness.ts';
import { finishLens } from '../../src/optics/finishedLens.ts';
import { outlinePoint } from '../../src/optics/outline.ts';
import { rise, thicknessField } from '../../src/optics/thicknessField.ts';
import { usualLens } from './frames.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

const demand = (by: Demand['by'], limitMm: number, needMm: number, xMm = 0, yMm = 0): Demand => ({
  by,
  limitMm,
  needMm,
  at: { xMm, yMm },
});
const demands = fc
  .array(
    fc.record({
      by: fc.constantFrom('centre' as const, 'edge' as const, 'hole' as const),
      limitMm: real(1, 2),
      needMm: real(1, 9),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((list) => list.map(({ by, limitMm, needMm }) => demand(by, limitMm, needMm)));

describe('the demand of a hole', () => {
  it('keeps its limit at its middle and all round its rim, and just so at the thinnest place', () => {
    fc.assert(
      fc.property(usualLens, real(0.5, 3), fc.nat(359), (lens, diameterMm, i) => {
        const beside = outlinePoint(lens.outline, i);
        const hole = { xMm: 0.85 * beside.xMm, yMm: 0.85 * beside.yMm, diameterMm, leastMm: 2 };
        const made = finishLens(lens);
        fc.pre(made.ok);
        const field = thicknessField(made.lens.front, made.lens.back, null);
        const { needMm, limitMm, at } = holeDemand(lens, field, hole);
        const left = (x: number, y: number) =>
          needMm + rise(field, x - lens.reference.xMm, y - lens.reference.yMm);
        const rim = Array.from({ length: 256 }, (_, k) => (k * Math.PI) / 128).map((turn) =>
          left(hole.xMm + (diameterMm / 2) * Math.cos(turn), hole.yMm + (diameterMm / 2) * Math.sin(turn)),
        );
        expectNear(Math.min(left(hole.xMm, hole.yMm), ...rim), 2, 0.001, 'mm');
        expect([limitMm, at]).toEqual([2, { xMm: hole.xMm, yMm: hole.yMm }]);
      }),
    );
  });
});

describe('the strictest demand', () => {
  it('asks for no less than any other, and the first of equals governs', () => {
    fc.assert(
      fc.property(demands, (list) => {
        const { needMm } = strictest(list);
        expect(needMm).toBe(Math.max(...list.map((each) => each.needMm)));
      }),
    );
    expect(strictest([demand('centre', 2, 2), demand('edge', 1, 2)]).by).toBe('centre');
  });

  it('is the one that is not a number, if one is', () => {
    expect(strictest([demand('centre', 2, 2), demand('hole', 1, Number.NaN), demand('edge', 1, 3)]).by).toBe(
      'hole',
    );
  });
});

describe('a given thickness', () => {
  it('falls short of each demand above it by the difference, and of nothing when it is the strictest', () => {
    fc.assert(
      fc.property(demands, real(1, 9), (list, thicknessMm) => {
        const short = shortfalls(list, thicknessMm);
        expect(short).toHaveLength(list.filter(({ needMm }) => needMm > thicknessMm + 1e-9).length);
        for (const { missingMm } of short) expect(missingMm).toBeGreaterThan(0);
        expect(shortfalls(list, strictest(list).needMm)).toEqual([]);
      }),
    );
  });

  it('says where it falls short', () => {
    expect(shortfalls([demand('hole', 2, 3.5, -10, 0), demand('edge', 1, 3.1, 0, -20)], 3)).toEqual([
      { at: 'hole', missingMm: 0.5, atDeg: 180 },
      { at: 'edge', missingMm: expect.closeTo(0.1, 9), atDeg: 270 },
    ]);
  });

  it('leaves no lens where nothing of a limit is left', () => {
    // A demand for 4 to keep 1 there: at 2.5 the surfaces have crossed by 0.5.
    const edge = demand('edge', 1, 4, 0, 20);
    expect(crossingFault([demand('centre', 2, 2), edge], 2.5)).toEqual({
      reason: 'surfaces-cross',
      thinnestMm: -0.5,
      atDeg: 90,
    });
    expect(crossingFault([edge, demand('centre', 2, 2)], 2.5)).toMatchObject({ thinnestMm: -0.5, atDeg: 90 });
    expect(crossingFault([demand('centre', 2, 2), edge], 3)).toMatchObject({ thinnestMm: 0 });
    expect(crossingFault([demand('centre', 2, 2), edge], 3.01)).toBeNull();
  });
});

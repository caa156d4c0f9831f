import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finishLens } from '../../src/optics/finishedLens.ts';
import { outlinePoint } from '../../src/optics/outline.ts';
import { frontAtEdgeMm, thicknessMap, thicknessOver } from '../../src/optics/thicknessMap.ts';
import { order, ring, sphere, usualLens } from './frames.ts';
import { expectNear } from './near.ts';

describe('thickness over the face', () => {
  it('is the centre thickness at the reference point and the edge thickness at the edge', () => {
    fc.assert(
      fc.property(usualLens, fc.nat(359), (lens, i) => {
        const made = finishLens(lens);
        fc.pre(made.ok);
        const thickness = thicknessOver(lens, made.lens);
        expectNear(thickness(lens.reference), made.lens.centreThicknessMm, 1e-9, 'mm');
        expectNear(thickness(outlinePoint(lens.outline, i)), made.lens.edgeMm[i] ?? Number.NaN, 1e-6, 'mm');
      }),
    );
  });

  it('adds up to the volume of the lens', () => {
    fc.assert(
      fc.property(usualLens, (lens) => {
        const made = finishLens(lens);
        fc.pre(made.ok);
        const { mm } = thicknessMap(lens, made.lens, 0.5);
        const sum = mm.reduce((total: number, value) => total + (value ?? 0), 0) * 0.25;
        expectNear(sum / made.lens.volumeMm3, 1, 0.02, '');
      }),
      { numRuns: 30 },
    );
  });
});

describe('the map of a round lens', () => {
  const lens = order({ power: sphere(-4), outline: ring(50) });
  const finished = () => {
    const made = finishLens(lens);
    if (!made.ok) throw new Error(made.reason);
    return made.lens;
  };

  it('has rows and columns over its box, null in the corners', () => {
    const map = thicknessMap(lens, finished(), 5);
    expect([map.rows, map.columns, map.leftMm, map.mm.length]).toEqual([11, 11, -25, 121]);
    expect(map.mm[0]).toBeNull();
    expectNear(map.mm[60] ?? Number.NaN, 1.5, 1e-9, 'mm');
  });

  it('lies on a front as deep at its edge as the sag of the circle', () => {
    const made = finished();
    const radius = made.front.radiusMm;
    expectNear(frontAtEdgeMm(lens, made)[77] ?? 0, radius - Math.sqrt(radius ** 2 - 625), 1e-9, 'mm');
  });
});

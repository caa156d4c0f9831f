import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finishLens } from '../../src/optics/finishedLens.ts';
import { stockThicknessMm } from '../../src/optics/stockThickness.ts';
import { order, outline, sphere } from './frames.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

const blank = {
  power: sphere(5),
  index: 1.498,
  frontPowerD: 8,
  frontConic: 0,
  diameterMm: 65,
  centreMm: 1,
  edgeMm: 1,
};

describe('a stock blank', () => {
  it('of +5.00, 65 across, edge 1.0, front 8, is 6.624 thick in 1.498', () => {
    // Computed from exact sags and the exact back vertex power
    const made = stockThicknessMm(blank);
    expectNear(made.ok ? made.centreThicknessMm : Number.NaN, 6.624, 0.0006, 'mm');
  });

  it('is refused where its surface does not reach its edge', () => {
    expect(stockThicknessMm({ ...blank, frontPowerD: 20, power: sphere(18) })).toMatchObject({
      ok: false,
      reason: 'front-does-not-reach',
    });
  });

  it('makes a plus lens thicker than one surfaced for the frame that it covers', () => {
    fc.assert(
      fc.property(real(1, 6), outline, (sphereD, frame) => {
        const stock = stockThicknessMm({ ...blank, power: sphere(sphereD), diameterMm: 75 });
        const surfaced = finishLens(
          order({
            power: sphere(sphereD),
            frontPowerD: 8,
            index: 1.498,
            outline: frame,
            limits: { centreMm: 1, edgeMm: 1, holes: [] },
          }),
        );
        if (!stock.ok || !surfaced.ok) throw new Error('both lenses exist');
        expect(stock.centreThicknessMm).toBeGreaterThan(surfaced.lens.centreThicknessMm);
      }),
    );
  });
});

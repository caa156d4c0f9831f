/** What benches measure against: finished lenses alone, without search, rules or price. */
import { finishLens } from '../../../src/optics/finishedLens.ts';
import { mirror } from '../../../src/optics/outline.ts';

/** Finishes both lenses of a pair in an outline of the right lens, from its radii in mm. */
export function barePair(radiiMm: readonly number[], sphereD: number): void {
  const right = { radiiMm };
  for (const outline of [right, mirror(right)])
    finishLens({
      power: { sphereD, cylinderD: -0.75, axisDeg: 170 },
      prism: { x: 0, y: 0 },
      index: 1.6,
      densityGPerCm3: 1.3,
      frontPowerD: 4,
      frontConic: 0,
      outline,
      reference: { xMm: 3, yMm: 2 },
      limits: { centreMm: 1.5, edgeMm: 1, holes: [] },
      fixedCentreThicknessMm: null,
      profile: null,
    });
}

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toMinusCylinder } from '../../src/optics/prescription.ts';
import { atCornea, atWornVertex, moveLens, powerMovedD } from '../../src/optics/vertex.ts';
import { expectNear } from './near.ts';
import { power, real } from './realistic.ts';

const sphere = (sphereD: number) => ({ sphereD, cylinderD: 0, axisDeg: 180 });

describe('a lens taken from 12 mm to the cornea', () => {
  it.each([
    // Computed from F/(1 - dF).
    [-10, -8.929],
    [-6, -5.597],
    [-4, -3.817],
    [10, 11.364],
    [6, 6.466],
    [12, 14.019],
  ])('changes %d D to %d D', (spectacleD, corneaD) => {
    expectNear(atCornea(sphere(spectacleD), 12).sphereD, corneaD, 0.0005, 'D');
  });

  it('of -8.00 -3.00 x 180 changes to -7.30 -2.42 x 180, each meridian by itself', () => {
    // Computed from F/(1 - dF).
    const { sphereD, cylinderD, axisDeg } = atCornea({ sphereD: -8, cylinderD: -3, axisDeg: 180 }, 12);
    expectNear(sphereD, -7.3, 0.005, 'D');
    expectNear(cylinderD, -2.42, 0.005, 'D');
    expect(axisDeg).toBe(180);
  });
});

describe('a lens worn at another distance than tested', () => {
  it('of -12.00 tested at 10 mm and worn at 14 mm is -12.61', () => {
    // UK optometry study cards, recomputed.
    expectNear(atWornVertex(sphere(-12), 10, 14).sphereD, -12.61, 0.006, 'D');
  });

  it('comes back when it is moved back', () => {
    fc.assert(
      fc.property(power, real(-15, 15), (p, mm) => {
        const back = moveLens(moveLens(p, mm), -mm);
        expectNear(back.sphereD, p.sphereD, 1e-9, 'D');
        expectNear(back.cylinderD, p.cylinderD, 1e-9, 'D');
      }),
    );
  });

  it('moves in two steps as in one', () => {
    fc.assert(
      fc.property(power, real(-8, 8), real(-8, 8), (p, a, b) => {
        expectNear(moveLens(moveLens(p, a), b).sphereD, moveLens(p, a + b).sphereD, 1e-8, 'D');
      }),
    );
  });

  it('is the same for either way of writing the cylinder', () => {
    fc.assert(
      fc.property(power, real(-15, 15), (p, mm) => {
        const one = toMinusCylinder(moveLens(p, mm));
        const other = moveLens(toMinusCylinder(p), mm);
        expectNear(one.sphereD, other.sphereD, 1e-9, 'D');
        expectNear(one.cylinderD, other.cylinderD, 1e-9, 'D');
      }),
    );
  });

  it('gains plus or loses minus as it comes towards the eye', () => {
    fc.assert(
      fc.property(real(-20, 20), real(0.5, 15), (powerD, mm) => {
        expect(powerMovedD(powerD, mm)).toBeGreaterThanOrEqual(powerD);
      }),
    );
  });
});

describe('a move that reaches the focus', () => {
  it('is refused with the distance of the focus', () => {
    expect(() => powerMovedD(20, 50)).toThrowErrorMatchingInlineSnapshot(
      `[RangeError: A lens of 20 D has its focus 50.0 mm away: a move of 50 mm reaches it, expected a shorter move.]`,
    );
    expect(() => powerMovedD(Number.NaN, 5)).toThrowErrorMatchingInlineSnapshot(
      `[RangeError: power: expected a finite number of D, found NaN.]`,
    );
  });
});

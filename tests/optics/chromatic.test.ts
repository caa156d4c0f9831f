import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  colourFringe,
  colourFringeAtGaze,
  FRINGE_NOTICED_FROM,
  gazePoint,
} from '../../src/optics/chromatic.ts';
import { prenticePrism } from '../../src/optics/prism.ts';
import { expectNear } from './near.ts';
import { power, prism, real } from './realistic.ts';

const minus6 = { sphereD: -6, cylinderD: 0, axisDeg: 180 };

describe('the colour fringe', () => {
  it.each([
    // Prism over Abbe number: The Indian Optician, Jul 2020, p. 133.
    [58, 0.103],
    [30, 0.2],
  ])('of -6.00 at 10 mm with an Abbe number of %d is %d', (abbe, fringe) => {
    const seen = prenticePrism(minus6, { xMm: 10, yMm: 0 });
    expectNear(colourFringe(seen, abbe), fringe, 0.0006, 'prism dioptres');
  });

  it('is inversely proportional to the Abbe number', () => {
    fc.assert(
      fc.property(prism, real(25, 60), (p, abbe) => {
        expectNear(colourFringe(p, 2 * abbe), colourFringe(p, abbe) / 2, 1e-12, 'prism dioptres');
      }),
    );
  });

  it('is noticed from about 0.1, from memory, and refused for an Abbe number of 0', () => {
    expect(FRINGE_NOTICED_FROM).toBe(0.1);
    expect(() => colourFringe({ x: 1, y: 0 }, 0)).toThrow('Abbe number: expected 1 or more, found 0.');
  });
});

describe('the colour fringe at a gaze', () => {
  it('is taken where the gaze crosses the lens, 27 mm before the centre of rotation', () => {
    const { xMm, yMm } = gazePoint({ angleDeg: 45, directionDeg: 90 });
    expectNear(xMm, 0, 1e-12, 'mm');
    expectNear(yMm, 27, 1e-12, 'mm');
    const abbe = 58;
    expectNear(
      colourFringeAtGaze(minus6, abbe, { angleDeg: 45, directionDeg: 90 }),
      16.2 / abbe,
      1e-9,
      'prism dioptres',
    );
  });

  it('straight ahead is that of the ordered prism alone, and grows with the gaze without one', () => {
    fc.assert(
      fc.property(power, prism, real(0, 360), real(1, 30), (p, ordered, directionDeg, angleDeg) => {
        const ahead = colourFringeAtGaze(p, 32, { angleDeg: 0, directionDeg }, ordered);
        expectNear(ahead, colourFringe(ordered, 32), 1e-12, 'prism dioptres');
        const near = colourFringeAtGaze(p, 32, { angleDeg, directionDeg });
        const far = colourFringeAtGaze(p, 32, { angleDeg: angleDeg + 1, directionDeg });
        expect(far).toBeGreaterThanOrEqual(near);
      }),
    );
  });
});

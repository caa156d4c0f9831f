import fc from 'fast-check';
import { describe, it } from 'vitest';
import { along, dot, fromAxes, leastTurn, toAxes, unit, type Vec3 } from '../../src/optics/vector3.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

const vector = fc.tuple(real(-9, 9), real(-9, 9), real(-9, 9)) as fc.Arbitrary<Vec3>;
const direction = fc.tuple(real(-1, 1), real(-1, 1), real(0.1, 1)).map(([x, y, z]) => unit([x, y, z]));

describe('the least turn to a direction', () => {
  it('is a frame at right angles that ends in the direction', () => {
    fc.assert(
      fc.property(direction, (z) => {
        const frame = leastTurn(z);
        for (const axis of [frame.x, frame.y, frame.z]) expectNear(dot(axis, axis), 1, 1e-12, '');
        expectNear(dot(frame.x, frame.y), 0, 1e-12, '');
        expectNear(dot(frame.x, z), 0, 1e-12, '');
        expectNear(dot(frame.y, z), 0, 1e-12, '');
      }),
    );
  });

  it('leaves the axis it turns about where it was', () => {
    fc.assert(
      fc.property(direction, (z) => {
        const about: Vec3 = [-z[1], z[0], 0];
        const turned = fromAxes(leastTurn(z), about);
        for (const i of [0, 1, 2] as const) expectNear(turned[i], about[i], 1e-12, '');
      }),
    );
  });
});

describe('components along axes', () => {
  it('give the vector back', () => {
    fc.assert(
      fc.property(direction, vector, (z, v) => {
        const frame = leastTurn(z);
        const back = along(fromAxes(frame, toAxes(frame, v)), -1, v);
        expectNear(dot(back, back), 0, 1e-20, '');
      }),
    );
  });
});

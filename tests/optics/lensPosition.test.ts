import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lensAxes } from '../../src/optics/lensPosition.ts';
import { dot } from '../../src/optics/vector3.ts';
import { expectNear } from './near.ts';
import { position } from './realistic.ts';

describe('the axes of a lens in its position of wear', () => {
  it('stand at right angles to each other and have length 1', () => {
    fc.assert(
      fc.property(position, (wear) => {
        const { x, y, z } = lensAxes(wear);
        for (const axis of [x, y, z]) expectNear(dot(axis, axis), 1, 1e-12, '');
        for (const [a, b] of [
          [x, y],
          [y, z],
          [z, x],
        ] as const)
          expectNear(dot(a, b), 0, 1e-12, '');
      }),
    );
  });

  it('bring the lower edge to the face in pantoscopic tilt', () => {
    const { y } = lensAxes({ eye: 'left', pantoscopicTiltDeg: 10, faceFormDeg: 0 });
    expect(-y[2]).toBeGreaterThan(0);
  });

  it('bring the temporal edge of either eye to the face in face form', () => {
    const right = lensAxes({ eye: 'right', pantoscopicTiltDeg: 0, faceFormDeg: 10 });
    const left = lensAxes({ eye: 'left', pantoscopicTiltDeg: 0, faceFormDeg: 10 });
    // Temporal is -x on the right, +x on the left; towards the face is +z.
    expect(-right.x[2]).toBeGreaterThan(0);
    expect(left.x[2]).toBeGreaterThan(0);
  });

  it('are mirrored between the eyes', () => {
    fc.assert(
      fc.property(position, (wear) => {
        const one = lensAxes({ ...wear, eye: 'right' });
        const other = lensAxes({ ...wear, eye: 'left' });
        expectNear(other.z[0], -one.z[0], 1e-12, '');
        expectNear(other.z[1], one.z[1], 1e-12, '');
        expectNear(other.z[2], one.z[2], 1e-12, '');
      }),
    );
  });

  it('keep the lens’s horizontal without roll in the frame: y stays in the vertical plane', () => {
    fc.assert(
      fc.property(position, (wear) => {
        expectNear(lensAxes(wear).y[0], 0, 1e-15, '');
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { resolvePrism } from '../../src/optics/prismBase.ts';
import { prismInPosition, wrapPrism } from '../../src/optics/wrapPrism.ts';
import { backwards, place } from './bareTrace.ts';
import { expectNear } from './near.ts';
import { eye, position, real } from './realistic.ts';
import { lensOf, usualOrder } from './singleVision.ts';

const plano = { sphereD: 0, cylinderD: 0, axisDeg: 180 };
const shield = lensOf({ power: plano, frontD: 8, thicknessMm: 2, index: 1.586 });

describe('the prism of a wrapped base curve', () => {
  it.each([
    // Computed by an exact trace: no power, index 1.586, front +8.00, 2 mm.
    ['right', 10, 0.18],
    ['right', 20, 0.39],
    ['left', 10, 0.18],
    ['left', 20, 0.39],
  ] as const)('of a %s lens at %d degrees is %d base out', (side, faceFormDeg, amount) => {
    const prism = wrapPrism(shield, { eye: side, pantoscopicTiltDeg: 0, faceFormDeg });
    const { horizontal, vertical } = resolvePrism(side, prism);
    expectNear(horizontal.amount, amount, 0.005, 'prism dioptres');
    expect(horizontal.base).toBe('out');
    expectNear(vertical.amount, 0, 1e-9, 'prism dioptres');
  });

  it('tends to 100 tan(tilt) F1 t/n as the tilt goes to nothing', () => {
    fc.assert(
      fc.property(eye, real(0.05, 1), real(2, 10), (side, faceFormDeg, frontD) => {
        const lens = lensOf({ power: plano, frontD, thicknessMm: 2, index: 1.586 });
        const { horizontal } = resolvePrism(
          side,
          wrapPrism(lens, { eye: side, pantoscopicTiltDeg: 0, faceFormDeg }),
        );
        const simple = (100 * Math.tan((faceFormDeg * Math.PI) / 180) * frontD * 0.002) / 1.586;
        expectNear(horizontal.amount, simple, 0.002 * simple, 'prism dioptres');
      }),
    );
  });

  it('of pantoscopic tilt is base down: the lower edge comes to the face as the temporal one does in wrap', () => {
    const { vertical } = resolvePrism(
      'right',
      wrapPrism(shield, { eye: 'right', pantoscopicTiltDeg: 10, faceFormDeg: 0 }),
    );
    expect(vertical.base).toBe('down');
    expectNear(vertical.amount, 0.18, 0.005, 'prism dioptres');
  });

  it('is the bend of a ray by a second trace, prescribed power and prism included', () => {
    fc.assert(
      fc.property(usualOrder, position, (order, wear) => {
        const lens = lensOf({ ...order, prism: { x: 2, y: 1 } });
        const prism = prismInPosition(lens, wear);
        const { towards } = backwards(place(lens, wear), [0, 0, 1], [0, 0, 1]);
        expectNear(prism.x, (-100 * towards[0]) / towards[2], 1e-5, 'prism dioptres');
        expectNear(prism.y, (-100 * towards[1]) / towards[2], 1e-5, 'prism dioptres');
      }),
      { numRuns: 60 },
    );
  });

  it('is the ordered prism to 0.5 % where nothing is tilted', () => {
    const lens = lensOf({
      power: plano,
      frontD: 0.1,
      thicknessMm: 0.001,
      index: 1.5,
      prism: { x: 3, y: -4 },
    });
    const prism = prismInPosition(lens, { eye: 'right', pantoscopicTiltDeg: 0, faceFormDeg: 0 });
    expectNear(prism.x, 3, 0.015, 'prism dioptres');
    expectNear(prism.y, -4, 0.02, 'prism dioptres');
  });
});

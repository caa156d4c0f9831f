import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { prismFromBase } from '../../src/optics/prismBase.ts';
import {
  axisText,
  dioptres,
  inAndUp,
  millimetres,
  powerCells,
  prismParts,
} from '../../src/workroom/figures.ts';

test.each([
  [-3.25, '−3.25'],
  [2, '+2.00'],
  [-0.004, '0.00'],
  [0.005, '+0.01'],
])('%d D is written %s', (valueD, text) => {
  expect(dioptres(valueD)).toBe(text);
});

test.each([
  [3.5, '3.5'],
  [31.25, '31.25'],
  [-2, '−2.0'],
  [-0.001, '0.0'],
])('%d mm is written %s', (valueMm, text) => {
  expect(millimetres(valueMm)).toBe(text);
});

describe('a power in cells', () => {
  it('is in minus-cylinder form whichever form it came in', () => {
    // P2: +2.00/-2.00x060 = plano/+2.00x150
    const minus = powerCells({ sphereD: 2, cylinderD: -2, axisDeg: 60 });
    expect(powerCells({ sphereD: 0, cylinderD: 2, axisDeg: 150 })).toEqual(minus);
    expect(minus).toEqual(['+2.00', '−2.00', '060']);
  });

  it('has no axis without a cylinder and three digits with one', () => {
    expect(powerCells({ sphereD: -1, cylinderD: 0, axisDeg: 90 })).toEqual(['−1.00', '', '']);
    expect(axisText({ sphereD: 0, cylinderD: -1, axisDeg: 5 })).toBe('005');
    expect(axisText({ sphereD: 0, cylinderD: -1, axisDeg: 180 })).toBe('180');
  });
});

describe('prism and places', () => {
  it('are told from the nose: what is in for one eye is in for its mirror image', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -20, max: 20, noNaN: true }),
        fc.double({ min: -20, max: 20, noNaN: true }),
        (x, y) => {
          expect(inAndUp('left', { xMm: -x, yMm: y })).toEqual(inAndUp('right', { xMm: x, yMm: y }));
        },
      ),
    );
    expect(prismParts('left', prismFromBase('left', { amount: 2, base: 'in' }))).toEqual([
      { amount: 2, base: 'in' },
    ]);
    expect(prismParts('right', { x: 0, y: 0 })).toEqual([]);
  });
});

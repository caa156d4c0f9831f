import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { prismFromBase } from '../../src/optics/prismBase.ts';
import { readingImbalance, SLAB_OFF_CONSIDERED_FROM } from '../../src/optics/readingImbalance.ts';
import { expectNear } from './near.ts';
import { power, prism, real } from './realistic.ts';

describe('the vertical imbalance at the reading level', () => {
  it('8 mm down of R -3.00 -2.00 x 180 and L -2.75 -2.50 x 90 is 1.8, base down before the right eye', () => {
    // US opticianry study cards, recomputed.
    const right = { power: { sphereD: -3, cylinderD: -2, axisDeg: 180 } };
    const left = { power: { sphereD: -2.75, cylinderD: -2.5, axisDeg: 90 } };
    expectNear(readingImbalance(right, left, { dropMm: 8 }).rightBaseUp, -1.8, 1e-9, 'prism dioptres');
  });

  it('counts the ordered prism', () => {
    const lens = { power: { sphereD: -3, cylinderD: 0, axisDeg: 180 } };
    const right = { ...lens, prism: prismFromBase('right', { amount: 1.5, base: 'up' }) };
    expectNear(readingImbalance(right, lens, { dropMm: 10 }).rightBaseUp, 1.5, 1e-12, 'prism dioptres');
  });

  it('has a vertical part of an oblique cylinder from the inset alone', () => {
    const right = { power: { sphereD: 0, cylinderD: -2, axisDeg: 45 } };
    const left = { power: { sphereD: 0, cylinderD: 0, axisDeg: 180 } };
    // Fxy = -C sin a cos a = +1: 2 mm to the nose (+x) gives -0.2 vertically.
    expectNear(
      readingImbalance(right, left, { dropMm: 0, insetMm: 2 }).rightBaseUp,
      -0.2,
      1e-12,
      'prism dioptres',
    );
  });

  it('is none between equal lenses, whatever thinning prism both carry', () => {
    fc.assert(
      fc.property(power, prism, real(0, 20), (p, both, dropMm) => {
        const one = { power: p, prism: both };
        expectNear(readingImbalance(one, one, { dropMm }).rightBaseUp, 0, 1e-9, 'prism dioptres');
      }),
    );
  });

  it('grows in proportion to the drop where no prism is ordered', () => {
    fc.assert(
      fc.property(power, power, real(1, 10), (r, l, dropMm) => {
        const one = readingImbalance({ power: r }, { power: l }, { dropMm }).rightBaseUp;
        const twice = readingImbalance({ power: r }, { power: l }, { dropMm: 2 * dropMm }).rightBaseUp;
        expectNear(twice, 2 * one, 1e-9, 'prism dioptres');
      }),
    );
  });

  it('suggests a slab-off from 1.5, from memory, and refuses a negative drop', () => {
    expect(SLAB_OFF_CONSIDERED_FROM).toBe(1.5);
    const lens = { power: { sphereD: 1, cylinderD: 0, axisDeg: 180 } };
    expect(() => readingImbalance(lens, lens, { dropMm: -1 })).toThrow(
      'reading drop: expected 0 to 40 mm, found -1.',
    );
  });
});

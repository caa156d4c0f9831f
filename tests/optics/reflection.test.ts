import fc from 'fast-check';
import { abs, type Complex, complex, exp, multiply } from 'mathjs';
import { describe, expect, it } from 'vitest';
import {
  allReflectionsTransmittance,
  reflectancePerSurface,
  singlePassTransmittance,
  uncoatedFaces,
} from '../../src/optics/reflection.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

type Matrix = Complex[][];

/** Transfer matrix of the step from index a to index b for the complex amplitudes of both directions. */
function step(a: number, b: number): Matrix {
  const same = complex((a + b) / (2 * a), 0);
  const turned = complex((a - b) / (2 * a), 0);
  return [
    [same, turned],
    [turned, same],
  ];
}

const through = (phase: number): Matrix => [
  [exp(complex(0, -phase)), complex(0, 0)],
  [complex(0, 0), exp(complex(0, phase))],
];

/** Transmittance of a slab by complex matrices, averaged over its phase: a lens is many wavelengths thick. */
function slabByMatrices(index: number, steps = 64): number {
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const slab = [step(1, index), through((Math.PI * i) / steps), step(index, 1)].reduce(
      (product, matrix) => multiply(product, matrix) as unknown as Matrix,
    );
    sum += 1 / Number(abs((slab[0] as Complex[])[0] as Complex)) ** 2;
  }
  return sum / steps;
}

describe('the reflectance of a surface', () => {
  it.each([
    // Computed from ((n - 1)/(n + 1))², for the index printed.
    [1.498, 3.97],
    [1.586, 5.14],
    [1.6, 5.33],
    [1.67, 6.3],
    [1.74, 7.29],
  ])('of index %d is %d %%', (index, percent) => {
    expectNear(100 * reflectancePerSurface(index), percent, 0.006, '%');
  });

  it('is the square of the amplitude that complex matrices give', () => {
    fc.assert(
      fc.property(real(1.3, 2), (index) => {
        const [[same, turned]] = step(1, index) as [[Complex, Complex]];
        expectNear(reflectancePerSurface(index), (turned.re / same.re) ** 2, 1e-12, '');
      }),
    );
  });

  it('is the same from either side and grows with the index', () => {
    fc.assert(
      fc.property(real(1, 2), (index) => {
        expect(reflectancePerSurface(index + 0.01)).toBeGreaterThan(reflectancePerSurface(index));
      }),
    );
    expect(() => reflectancePerSurface(0.9)).toThrow('refractive index: expected 1 or more, found 0.9.');
  });
});

describe('the transmittance of an uncoated lens', () => {
  it('of index 1.523 is 91.6 % in a single pass and 91.76 % with all inner reflections', () => {
    // National Federation of Opticianry Schools, OPT 11 module 11.
    expectNear(100 * singlePassTransmittance(uncoatedFaces(1.523)), 91.6, 0.05, '%');
    expectNear(100 * allReflectionsTransmittance(uncoatedFaces(1.523)), 91.76, 0.005, '%');
  });

  it('with all reflections is 2n/(n² + 1), and what complex matrices average over the phase', () => {
    fc.assert(
      fc.property(real(1.4, 1.9), (index) => {
        const all = allReflectionsTransmittance(uncoatedFaces(index));
        expectNear(all, (2 * index) / (index ** 2 + 1), 1e-12, '');
        expectNear(all, slabByMatrices(index), 1e-9, '');
      }),
      { numRuns: 20 },
    );
  });

  it('is never below the single pass, and both lose with absorption and with each face', () => {
    const share = real(0, 0.3);
    fc.assert(
      fc.property(share, share, real(0.01, 1), (front, back, internal) => {
        const faces = { front, back, internal };
        expect(allReflectionsTransmittance(faces)).toBeGreaterThanOrEqual(singlePassTransmittance(faces));
        expect(allReflectionsTransmittance(faces)).toBeLessThanOrEqual(internal);
        const coated = { front: front / 2, back, internal };
        expect(allReflectionsTransmittance(coated)).toBeGreaterThanOrEqual(
          allReflectionsTransmittance(faces),
        );
      }),
    );
  });

  it('is refused for a face that reflects more than all', () => {
    expect(() => singlePassTransmittance({ front: 1.2, back: 0 })).toThrow('reflectance of the front');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addPrisms } from '../../src/optics/prism.ts';
import {
  BASES,
  nasalSign,
  pairPrism,
  prismFromBase,
  prismFromPolar,
  prismToPolar,
  resolvePrism,
} from '../../src/optics/prismBase.ts';
import { expectNear } from './near.ts';
import { eye, prism } from './realistic.ts';

describe('a base', () => {
  it('in is nasal: to the viewer’s right on the right lens, to the left on the left', () => {
    expect(prismFromBase('right', { amount: 2, base: 'in' })).toEqual({ x: 2, y: 0 });
    expect(prismFromBase('left', { amount: 2, base: 'in' })).toEqual({ x: -2, y: 0 });
    expect(prismFromBase('right', { amount: 2, base: 'out' })).toEqual({ x: -2, y: 0 });
    expect(prismFromBase('left', { amount: 2, base: 'out' })).toEqual({ x: 2, y: 0 });
    expect([nasalSign('right'), nasalSign('left')]).toEqual([1, -1]);
  });

  it.each([
    // Durham Technical Community College, Opticianry 142, prism base, parts a and b.
    ['right', 'up', 37],
    ['left', 'down', 217],
  ] as const)('of a %s eye with 2 in and 1.5 %s compounds to 2.5 at %d', (side, vertical, baseDeg) => {
    const sum = addPrisms(
      prismFromBase(side, { amount: 2, base: 'in' }),
      prismFromBase(side, { amount: 1.5, base: vertical }),
    );
    expectNear(prismToPolar(sum).amount, 2.5, 1e-12, 'prism dioptres');
    expectNear(prismToPolar(sum).baseDeg, baseDeg, 0.5, 'degrees');
  });

  it('by name resolves to itself', () => {
    fc.assert(
      fc.property(eye, fc.constantFrom(...BASES), fc.integer({ min: 1, max: 40 }), (side, base, amount) => {
        const { horizontal, vertical } = resolvePrism(side, prismFromBase(side, { amount, base }));
        const part = base === 'in' || base === 'out' ? horizontal : vertical;
        expect(part).toEqual({ amount, base });
      }),
    );
  });

  it('in degrees and a polar prism are the same', () => {
    expect(prismFromBase('left', { amount: 3, base: 217 })).toEqual(
      prismFromPolar({ amount: 3, baseDeg: 217 }),
    );
  });
});

describe('polar form', () => {
  it('goes to the vector and back', () => {
    fc.assert(
      fc.property(prism, (p) => {
        const { x, y } = prismFromPolar(prismToPolar(p));
        expectNear(x, p.x, 1e-9, 'prism dioptres');
        expectNear(y, p.y, 1e-9, 'prism dioptres');
      }),
    );
  });

  it('of no prism has base 0', () => {
    for (const x of [0, -0]) expect(prismToPolar({ x, y: 0 })).toEqual({ amount: 0, baseDeg: 0 });
  });
});

describe('a resolved prism', () => {
  it('names nothing as base in and base up', () => {
    expect(resolvePrism('left', { x: 0, y: 0 })).toEqual({
      horizontal: { amount: 0, base: 'in' },
      vertical: { amount: 0, base: 'up' },
    });
  });

  it('compounds to the vector again', () => {
    fc.assert(
      fc.property(eye, prism, (side, p) => {
        const { horizontal, vertical } = resolvePrism(side, p);
        const sum = addPrisms(prismFromBase(side, horizontal), prismFromBase(side, vertical));
        expectNear(sum.x, p.x, 1e-12, 'prism dioptres');
        expectNear(sum.y, p.y, 1e-12, 'prism dioptres');
      }),
    );
  });
});

describe('the prism of a pair', () => {
  it('cancels what both eyes have alike vertically and adds base in to base in', () => {
    const right = addPrisms(
      prismFromBase('right', { amount: 1, base: 'in' }),
      prismFromBase('right', { amount: 2, base: 'down' }),
    );
    const left = addPrisms(
      prismFromBase('left', { amount: 1.5, base: 'in' }),
      prismFromBase('left', { amount: 2, base: 'down' }),
    );
    expect(pairPrism(right, left)).toEqual({ baseIn: 2.5, rightBaseUp: 0 });
  });

  it('changes sign when the eyes are exchanged', () => {
    fc.assert(
      fc.property(prism, prism, (a, b) => {
        expectNear(pairPrism(a, b).rightBaseUp, -pairPrism(b, a).rightBaseUp, 1e-12, 'prism dioptres');
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { imageJumpPrism } from '../../src/optics/imageJump.ts';
import { expectNear } from './near.ts';
import { addD, real } from './realistic.ts';

describe('the image jump of a segment', () => {
  it('of a 28 mm flat top, 5 mm to its centre, with an add of +3.25 is 1.63', () => {
    // US opticianry study cards.
    expectNear(imageJumpPrism(3.25, 5), 1.63, 0.006, 'prism dioptres');
  });

  it('grows with the add and with the distance to the centre, and is none at the centre', () => {
    fc.assert(
      fc.property(addD, real(0, 20), (add, mm) => {
        expect(imageJumpPrism(add + 0.25, mm + 1)).toBeGreaterThan(imageJumpPrism(add, mm));
        expect(imageJumpPrism(add, 0)).toBe(0);
      }),
    );
  });

  it('is refused for a negative add', () => {
    expect(() => imageJumpPrism(-1, 5)).toThrow('add: expected 0 D or more, found -1.');
  });
});

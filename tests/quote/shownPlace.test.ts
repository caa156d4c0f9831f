import fc from 'fast-check';
import { expect, it } from 'vitest';
import { placeOnLens, shownPrism } from '../../src/quote/shownPlace.ts';
import { words } from '../fixtures/bench.ts';

it('names the same place on both lenses for mirrored angles', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 3599 }), (tenths) => {
      // Halfway between two eighths a mirror turns the rounding round.
      const atDeg = tenths / 10 + 0.03;
      expect(placeOnLens('left', 180 - atDeg)).toBe(placeOnLens('right', atDeg));
    }),
  );
});

it('calls the side of the nose of the right lens, seen from the front, nasal', () => {
  expect(placeOnLens('right', 0)).toBe('nasal');
  expect(placeOnLens('right', 180)).toBe('temporal');
  expect(placeOnLens('right', 90)).toBe('above');
  expect(placeOnLens('left', 0)).toBe('temporal');
});

it('writes a prism by its components, never by degrees', () => {
  // Durham, prism base: right 1.5 up and 2 in are 2.5 at 037; left 1.5 down and 2 in are 2.5 at 217.
  const [right, left] = [
    { amount: 2.5, baseDeg: 36.87 },
    { amount: 2.5, baseDeg: 216.87 },
  ];
  expect(shownPrism(words, 'right', right)).toBe('2.00 \u0394 base in and 1.50 \u0394 base up');
  expect(shownPrism(words, 'left', left)).toBe('2.00 \u0394 base in and 1.50 \u0394 base down');
  expect(shownPrism(words, 'left', { amount: 3, baseDeg: 0 })).toBe('3.00 \u0394 base out');
  expect(shownPrism(words, 'right', { amount: 1, baseDeg: 270 })).toBe('1.00 \u0394 base down');
});

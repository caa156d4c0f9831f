import fc from 'fast-check';
import { expect, it } from 'vitest';
import { placeOnLens, writeLens } from '../../src/configurator/write.ts';

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

it('writes a power as a prescription does', () => {
  const power = { sphere: -3.25, cylinder: -0.75, axis: 170, prism: null, add: null };
  expect(writeLens(power)).toBe('\u22123.25 \u22120.75 \u00d7 170');
  expect(writeLens({ ...power, sphere: 2, cylinder: 0 })).toBe('+2.00');
  expect(writeLens({ ...power, sphere: 0, cylinder: 0 })).toBe('0.00');
});

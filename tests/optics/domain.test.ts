import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { within } from '../../src/optics/domain.ts';
import { real } from './realistic.ts';

describe('a number for a formula', () => {
  it('passes unchanged inside its range, ends included', () => {
    fc.assert(
      fc.property(real(-5, 5), (value) => {
        expect(within('power', value, -5, 5, 'D')).toBe(value);
      }),
    );
  });

  it.each([
    [() => within('tilt', 50, -45, 45, 'degrees'), 'tilt: expected -45 to 45 degrees, found 50.'],
    [() => within('add', -1, 0, Infinity, 'D'), 'add: expected 0 D or more, found -1.'],
    [
      () => within('power', Number.NaN, -Infinity, Infinity, 'D'),
      'power: expected a finite number of D, found NaN.',
    ],
    [() => within('index', 0.5, 1, 5, ''), 'index: expected 1 to 5, found 0.5.'],
  ])('outside it is refused by name (%#)', (refused, message) => {
    expect(refused).toThrow(new RangeError(message));
  });
});

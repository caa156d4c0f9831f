import { expect, it } from 'vitest';
import { writeLens } from '../../src/configurator/write.ts';

it('writes a power as a prescription does', () => {
  const power = { sphere: -3.25, cylinder: -0.75, axis: 170, prism: null, add: null };
  expect(writeLens(power)).toBe('\u22123.25 \u22120.75 \u00d7 170');
  expect(writeLens({ ...power, sphere: 2, cylinder: 0 })).toBe('+2.00');
  expect(writeLens({ ...power, sphere: 0, cylinder: 0 })).toBe('0.00');
});

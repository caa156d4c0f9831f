import { describe, expect, it } from 'vitest';
import { finishLens } from '../../src/optics/finishedLens.ts';
import { asSolid } from '../optics/solids/asSolid.ts';
import { ORDERS } from '../optics/solids/orders.ts';
import { measureExactly } from './exactModel.ts';

const CHOSEN = [
  'sphere, round',
  'strong plus, round',
  'toric at 180',
  'toric at 90',
  'toric at 45',
  'toric at 135',
  'oblique prism, minus',
  'oblique prism, plus',
  'far decentred',
  'bulging back',
];
const chosen = ORDERS.filter(({ name }) => CHOSEN.some((start) => name.startsWith(`${start}:`)));

describe('a finished lens against an exact solid turned from the same radii', () => {
  it('is compared for ten orders', () => {
    expect(chosen).toHaveLength(10);
  });

  it.each(chosen)('agrees to 0.01 mm and 0.1 % for $name', ({ order }) => {
    const made = finishLens(order);
    if (!made.ok) throw new Error(`no lens: ${JSON.stringify(made)}`);
    const model = asSolid(order, made.lens);
    const rays = Array.from({ length: 12 }, (_, i) => i * 30 + 7);
    const solid = measureExactly(model, [[0, 0], ...rays.map((i) => model.outline[i] as [number, number])]);
    const expected = [made.lens.centreThicknessMm, ...rays.map((i) => made.lens.edgeMm[i] ?? Number.NaN)];
    const off = solid.thickness.map((mm, i) => Math.abs(mm - (expected[i] ?? Number.NaN)));
    expect(Math.max(...off)).toBeLessThan(0.0001);
    expect(Math.abs(made.lens.volumeMm3 / solid.volume - 1)).toBeLessThan(0.001);
  });
});

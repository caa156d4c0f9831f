import { describe, expect, it } from 'vitest';
import { finishLens } from '../../src/optics/finishedLens.ts';
import { asSolid } from './solids/asSolid.ts';
import { measure } from './solids/meshModel.ts';
import { ORDERS } from './solids/orders.ts';

describe('a finished lens against a mesh solid turned from the same radii', () => {
  it.each(ORDERS)('agrees to 0.01 mm and 0.1 % for $name', { timeout: 60_000 }, ({ order }) => {
    const made = finishLens(order);
    if (!made.ok) throw new Error(`no lens: ${JSON.stringify(made)}`);
    const model = asSolid(order, made.lens);
    const rays = Array.from({ length: 24 }, (_, i) => i * 15);
    const solid = measure(model, [[0, 0], ...rays.map((i) => model.outline[i] as [number, number])]);
    const worst = Math.max(
      Math.abs((solid.thickness[0] ?? Number.NaN) - made.lens.centreThicknessMm),
      ...rays.map((i, k) => Math.abs((solid.thickness[k + 1] ?? Number.NaN) - (made.lens.edgeMm[i] ?? 0))),
    );
    expect(worst).toBeLessThan(0.01);
    expect(Math.abs(made.lens.volumeMm3 / solid.volume - 1)).toBeLessThan(0.001);
  });
});

import { describe, expect, it } from 'vitest';
import type { Frame } from '../../src/catalogue/frame.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { optionReach } from '../../src/quote/optionReach.ts';

const DATE = '2026-11-25';
const reading = loadCatalogue('content');
if (!reading.ok) throw new Error('The demonstration shop has faults: run npm run check.');
const shop = reading.catalogue;
const frameOf = (id: string) => shop.frames.find((frame) => frame.id === id) as Frame;

describe('what an option is good for', () => {
  const frames = [frameOf('stint'), frameOf('dunlin')];
  const told = (offer: typeof shop) => optionReach({ ...offer, frames }, DATE, [-2, 30], -0.75);

  it('leaves out a material that may not be drilled from a drilled frame', () => {
    const drilled = told(shop).find(({ id }) => id === 'standard-plastic');
    expect(drilled).toEqual({ kind: 'material', id: 'standard-plastic', frames: ['dunlin'], spheresD: [-2] });
  });

  it('shows an option that nothing can be ordered with as dead', () => {
    const tints = shop.tints.map((tint) => (tint.id === 'brown-50' ? { ...tint, materials: [] } : tint));
    const dead = told({ ...shop, tints }).filter(({ frames: of }) => of.length === 0);
    expect(dead.filter(({ kind }) => kind === 'tint')).toEqual([
      { kind: 'tint', id: 'brown-50', frames: [], spheresD: [] },
    ]);
  });
});

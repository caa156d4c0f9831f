import { describe, expect, it } from 'vitest';
import type { Colourway, PartColour } from '../../../src/catalogue/frame.ts';
import { mottles, paints } from '../../../src/components/drawing/paint.ts';

const solid: PartColour = { colour: '#3c4650', second: null, finish: 'solid' };
const mottled: PartColour = { colour: '#5b3a1e', second: '#c08a4a', finish: 'mottled' };
const colourway = (parts: Partial<Pick<Colourway, 'front' | 'bridge' | 'temples'>>): Colourway => ({
  code: 'x',
  name: 'X',
  front: solid,
  bridge: solid,
  temples: solid,
  priceDifferenceMinor: 0,
  stock: 'in-stock',
  ...parts,
});

describe('the paint of a colourway', () => {
  it('is its own colour where a part is solid', () => {
    expect(paints(colourway({}), 'u').front).toEqual({ fill: '#3c4650', opacity: 1, mottle: null });
  });

  it('defines one mottle for all parts of the same material', () => {
    const parts = paints(colourway({ front: mottled, bridge: mottled, temples: mottled }), 'u');
    expect(mottles(parts)).toHaveLength(1);
    expect(new Set(Object.values(parts).map((p) => p.fill)).size).toBe(1);
  });

  it('keeps the ids of two drawings apart', () => {
    const ids = ['a', 'b'].flatMap((uid) =>
      mottles(paints(colourway({ front: mottled, temples: { ...mottled, second: '#000000' } }), uid)).map(
        (m) => m.id,
      ),
    );
    expect(new Set(ids).size).toBe(4);
  });

  it('lets see-through parts be seen through, and no other', () => {
    const { front, temples } = paints(colourway({ front: { ...solid, finish: 'clear' } }), 'u');
    expect(front.opacity).toBeLessThan(1);
    expect(temples.opacity).toBe(1);
  });

  it('falls back on one colour for a mottle without a second', () => {
    const parts = paints(colourway({ front: { ...mottled, second: null } }), 'u');
    expect(parts.front.fill).toBe('#5b3a1e');
  });
});

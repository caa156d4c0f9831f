import { describe, expect, it } from 'vitest';
import type { Frame } from '../../src/catalogue/frame.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { relatedFrames } from '../../src/components/relatedFrames.ts';

const reading = loadCatalogue('content');
if (!reading.ok) throw new Error('The demo has faults.');
const { frames } = reading.catalogue;
const [model] = frames;

function frame(id: string, aMm: number, more: Partial<Frame> = {}): Frame {
  if (model === undefined) throw new Error('The demo has no frame.');
  const [size] = model.sizes;
  if (size === undefined) throw new Error('The frame has no size.');
  const mounting = { kind: 'full' } as const;
  return {
    ...model,
    mounting,
    sun: false,
    wearer: 'adult',
    id,
    sizes: [{ ...size, aMm, edMm: 52 }],
    ...more,
  };
}
const ids = (one: Frame, all: readonly Frame[]) => relatedFrames(one, all).map((r) => r.frame.id);

describe('related frames', () => {
  it('are the three nearest, whatever their order in the shop', () => {
    const all = [frame('a', 50), frame('b', 51), frame('c', 53), frame('d', 48.5), frame('e', 60)];
    const [own] = all;
    if (own === undefined) throw new Error('No frame.');
    expect(ids(own, all)).toEqual(['b', 'd', 'c']);
    expect(ids(own, all.toReversed())).toEqual(['b', 'd', 'c']);
  });

  it('come by id where they are equally near', () => {
    expect(ids(frame('m', 50), [frame('z', 51), frame('b', 49)])).toEqual(['b', 'z']);
  });

  it('have the same mounting first, unless another is nearer by 4 mm', () => {
    const grooved = { mounting: { kind: 'grooved' } } as const;
    expect(ids(frame('m', 50), [frame('g', 50, grooved), frame('f', 53.9)])).toEqual(['f', 'g']);
    expect(ids(frame('m', 50), [frame('g', 50, grooved), frame('f', 54.1)])).toEqual(['g', 'f']);
  });

  it('are for the same wearer, and for the same light first', () => {
    const others = [
      frame('child', 50, { wearer: 'child' }),
      frame('sun', 50, { sun: true }),
      frame('clear', 58),
    ];
    expect(ids(frame('m', 50), others)).toEqual(['clear', 'sun']);
  });

  it('never hold the frame itself, in the whole demo', () => {
    for (const one of frames) {
      const related = relatedFrames(one, frames);
      expect(related.length).toBeLessThanOrEqual(3);
      expect(related.map((r) => r.frame.id)).not.toContain(one.id);
    }
  });
});

import fc from 'fast-check';
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
function twoSizes(...widthsMm: readonly number[]): Pick<Frame, 'sizes'> {
  return { sizes: widthsMm.flatMap((aMm) => frame('any', aMm).sizes) };
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

  it('are those that a look at every frame finds', () => {
    const tenths = fc.integer({ min: 400, max: 600 }).map((n) => n / 10);
    const shops = fc.array(fc.record({ a: tenths, b: tenths, sun: fc.boolean(), grooved: fc.boolean() }), {
      minLength: 2,
      maxLength: 30,
    });
    fc.assert(
      fc.property(shops, (made) => {
        const all = made.map(({ a, b, sun, grooved }, index) =>
          frame(`f${index}`, a, { sun, mounting: { kind: grooved ? 'grooved' : 'full' }, ...twoSizes(a, b) }),
        );
        for (const own of all) {
          const apart = (other: Frame) =>
            Math.min(
              ...own.sizes.flatMap((one) =>
                other.sizes.map((two) =>
                  Math.hypot(
                    one.aMm - two.aMm,
                    one.bMm - two.bMm,
                    one.dblMm - two.dblMm,
                    one.edMm - two.edMm,
                    own.mounting.kind === other.mounting.kind ? 0 : 4,
                  ),
                ),
              ),
            );
          const expected = all
            .filter((other) => other !== own)
            .map((other) => ({ id: other.id, light: Number(other.sun !== own.sun), apart: apart(other) }))
            .sort((x, y) => x.light - y.light || x.apart - y.apart || (x.id < y.id ? -1 : 1))
            .slice(0, 3)
            .map(({ id }) => id);
          expect(ids(own, all)).toEqual(expected);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('never hold the frame itself, in the whole demo', () => {
    for (const one of frames) {
      const related = relatedFrames(one, frames);
      expect(related.length).toBeLessThanOrEqual(3);
      expect(related.map((r) => r.frame.id)).not.toContain(one.id);
    }
  });
});

import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frameGroup, packFrame, unpackFrame } from '../../src/configurator/framePack.ts';
import { changesOf } from '../../src/quote/change.ts';
import { frameOf, shop } from './shop.ts';

const sent = (frame: Parameters<typeof packFrame>[0]) =>
  unpackFrame(JSON.parse(JSON.stringify(packFrame(frame))));

describe('a packed frame', () => {
  it('comes back as it was, to the last digit, but for its story', () => {
    for (const frame of shop.frames) expect(sent(frame)).toEqual({ ...frame, story: '' });
  });

  it('comes back with any radii, those finer than the steps too', () => {
    const [size] = frameOf('sanderling').sizes;
    if (size === undefined) throw new Error('The frame has a size.');
    const anyRadii = fc.array(fc.double({ min: 5, max: 40, noNaN: true }), { minLength: 8, maxLength: 12 });
    fc.assert(
      fc.property(anyRadii, fc.boolean(), (radii, rounded) => {
        const radiiMm = rounded ? radii.map((mm) => Math.round(mm * 1000) / 1000) : radii;
        const frame = {
          ...frameOf('sanderling'),
          sizes: [{ ...size, outline: { ...size.outline, radiiMm } }],
        };
        expect(sent(frame).sizes[0]?.outline.radiiMm).toEqual(radiiMm);
      }),
    );
  });

  it('lies in one file with every frame that advice may lead to, at most 25 kB gzipped', () => {
    for (const frame of shop.frames) {
      const group = shop.frames.filter((one) => frameGroup(one) === frameGroup(frame));
      const lenses = { use: 'distance' as const, design: '', material: '', tint: null, coating: null };
      const changes = changesOf(shop, { frame: frame.id, prescription: null, lenses }, 'frame');
      expect(group.map(({ id }) => id)).toEqual(
        expect.arrayContaining([...new Set(changes.map(({ value }) => value))]),
      );
      expect(gzipSync(JSON.stringify(group.map(packFrame))).length).toBeLessThanOrEqual(25_000);
    }
  });
});

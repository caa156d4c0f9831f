import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BRIDGES, type Mounting } from '../../../src/catalogue/frame.ts';
import { dimensions } from '../../../src/components/drawing/dimension.ts';
import { fieldFor } from '../../../src/components/drawing/field.ts';
import { frameShape, holePlace } from '../../../src/components/drawing/frameDrawing.ts';
import { rimWidth } from '../../../src/components/drawing/rim.ts';
import { OUTLINE_FAMILIES } from '../../../src/optics/outlineFamily.ts';
import { expectNear } from '../../optics/near.ts';
import { extent, pathPoints } from './pathPoints.ts';
import { sampleFrame } from './sampleFrame.ts';

const drilled: Mounting = {
  kind: 'drilled',
  holes: [
    { side: 'nasal', insetMm: 3, aboveCentreMm: 5, diameterMm: 1.4 },
    { side: 'temporal', insetMm: 4, aboveCentreMm: 7, diameterMm: 1.4 },
  ],
};
const mountings: readonly Mounting[] = [{ kind: 'full' }, { kind: 'grooved' }, drilled];

const anyFrame = fc.record({
  family: fc.constantFrom(...OUTLINE_FAMILIES),
  aMm: fc.integer({ min: 40, max: 60 }),
  bMm: fc.integer({ min: 30, max: 48 }),
  dblMm: fc.integer({ min: 14, max: 24 }),
  bridge: fc.constantFrom(...BRIDGES),
  mounting: fc.constantFrom(...mountings),
});

describe('a frame drawn to scale', () => {
  it('has A, B and DBL at the bevel apex, whatever holds the lens', () => {
    fc.assert(
      fc.property(anyFrame, (sample) => {
        const { frame, size } = sampleFrame(sample);
        const lens = extent(pathPoints(frameShape(frame, size).apex));
        expectNear(lens.widthMm, size.aMm, 0.1, 'mm');
        expectNear(lens.heightMm, size.bMm, 0.1, 'mm');
        // The right lens is at the viewer's left, and its mirror image lies DBL away.
        expectNear(2 * -lens.right, size.dblMm, 0.1, 'mm');
      }),
      { numRuns: 25 },
    );
  });

  it('draws no figure that is not a number', () => {
    fc.assert(
      fc.property(anyFrame, (sample) => {
        const { frame, size } = sampleFrame(sample);
        expect(JSON.stringify(frameShape(frame, size))).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 25 },
    );
  });

  it('puts a full rim round the lens by its width less its cover, and over it by its cover', () => {
    const { frame, size } = sampleFrame({ family: 'round', aMm: 46, bMm: 46 });
    const { outMm, inMm } = rimWidth(frame);
    expect([outMm, inMm]).toEqual([3.2, 0.8]);
    const shape = frameShape(frame, size);
    expect(extent(pathPoints(shape.rim ?? '')).widthMm).toBeCloseTo(46 + 2 * 3.2, 1);
    expect(extent(pathPoints(shape.lens)).widthMm).toBeCloseTo(46 - 2 * 0.8, 1);
  });

  it('gives a grooved lens a rim above and a thread below', () => {
    const { frame, size } = sampleFrame({ mounting: { kind: 'grooved' } });
    const shape = frameShape(frame, size);
    const rim = extent(pathPoints(shape.rim ?? ''));
    const thread = extent(pathPoints(shape.thread ?? ''));
    expect(rim.top).toBeGreaterThan(size.bMm / 2);
    expect(rim.bottom).toBeGreaterThan(-size.bMm / 4);
    expect(thread.bottom).toBeCloseTo(-size.bMm / 2, 1);
    expect(thread.top).toBeLessThan(size.bMm / 4);
  });

  it('gives a drilled lens no rim, and its holes at their insets from the box', () => {
    const { frame, size } = sampleFrame({ mounting: drilled, bridge: 'pads' });
    const shape = frameShape(frame, size);
    expect(shape.rim).toBeNull();
    const box = extent(pathPoints(shape.box));
    expect(shape.holes.map((hole) => [box.right - hole.cx, hole.cx - box.left])).toEqual([
      [expect.closeTo(3, 2), expect.closeTo(size.aMm - 3, 2)],
      [expect.closeTo(size.aMm - 4, 2), expect.closeTo(4, 2)],
    ]);
    expect(shape.holes.map((hole) => -hole.cy)).toEqual([5, 7]);
  });

  it('joins both rims by a bridge that is the same on either side and leaves the lenses free', () => {
    for (const bridge of BRIDGES) {
      const { frame, size } = sampleFrame({ bridge });
      const shape = frameShape(frame, size);
      const span = extent(pathPoints(shape.bridge));
      expect(span.left).toBeCloseTo(-span.right, 1);
      expect(span.right).toBeGreaterThan(size.dblMm / 2 - rimWidth(frame).outMm);
      const seen = extent(pathPoints(shape.lens));
      expect(span.left).toBeGreaterThan(seen.left + size.aMm / 2);
    }
  });

  it('shows pads only where the frame has them', () => {
    for (const bridge of BRIDGES) {
      const { frame, size } = sampleFrame({ bridge });
      expect(frameShape(frame, size).pad !== null).toBe(bridge === 'pads');
    }
  });
});

describe('the place of a hole', () => {
  it('is mirrored by its side', () => {
    const hole = { insetMm: 4, aboveCentreMm: 3, diameterMm: 1.4 };
    const nasal = holePlace({ ...hole, side: 'nasal' }, { aMm: 50 }, -34);
    const temporal = holePlace({ ...hole, side: 'temporal' }, { aMm: 50 }, -34);
    expect(nasal.xMm + temporal.xMm).toBe(-68);
    expect(nasal).toEqual({ xMm: -13, yMm: 3 });
  });
});

describe('dimension lines', () => {
  it('are as long as the figures beside them', () => {
    fc.assert(
      fc.property(anyFrame, (sample) => {
        const { frame, size } = sampleFrame(sample);
        for (const { letter, mm, line } of dimensions(size, frameShape(frame, size))) {
          const { widthMm, heightMm } = extent(pathPoints(line));
          expect(mm).toBe({ A: size.aMm, B: size.bMm, DBL: size.dblMm }[letter]);
          expect(widthMm + heightMm).toBeCloseTo(mm, 1);
        }
      }),
      { numRuns: 30 },
    );
  });
});

describe('the field of a list', () => {
  it('holds every front of it', () => {
    const fronts = [sampleFrame({ aMm: 60, bMm: 30 }), sampleFrame({ aMm: 42, bMm: 46 })];
    const field = fieldFor(fronts);
    for (const { frame, size } of fronts) {
      const shape = frameShape(frame, size);
      expect(field.spanMm).toBeGreaterThan(2 * shape.halfWidthMm);
      expect(field.heightMm).toBeGreaterThan(2 * shape.halfHeightMm);
    }
  });
});

describe('the visible width of a rim', () => {
  it('is its depth when cut from sheet, and less when bent from wire', () => {
    const { frame } = sampleFrame();
    const width = (rimDepthMm: number) => {
      const { outMm, inMm } = rimWidth({ ...frame, rimDepthMm, rimCoverMm: 0.5 });
      return outMm + inMm;
    };
    expect(width(4.2)).toBeCloseTo(4.2, 6);
    expect(width(2)).toBeCloseTo(1.2, 6);
  });

  it('is none where the lens has no rim', () => {
    expect(rimWidth(sampleFrame({ mounting: drilled }).frame)).toEqual({ outMm: 0, inMm: 0 });
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  areaWithinMm2,
  commonAreaMm2,
  horizontalChord,
  polygonAreaMm2,
} from '../../src/optics/convexClip.ts';
import { areaMm2, box } from '../../src/optics/outline.ts';
import { verticalChord } from '../../src/optics/outlineChord.ts';
import { rotate } from '../../src/optics/outlineShape.ts';
import { outline, ring } from './frames.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

const rectangle = (left: number, bottom: number, right: number, top: number) =>
  [
    [left, bottom],
    [right, bottom],
    [right, top],
    [left, top],
  ] as const;

describe('the area common to an outline and a region', () => {
  it('of a ring and its lower half is half the ring', () => {
    expectNear(commonAreaMm2(ring(50), rectangle(-40, -40, 40, 0)), areaMm2(ring(50)) / 2, 1e-9, 'mm2');
    expectNear(commonAreaMm2(ring(50), rectangle(0, 0, 40, 40)), areaMm2(ring(50)) / 4, 1e-9, 'mm2');
  });

  it('is the region inside the lens, the lens inside the region, and nothing apart', () => {
    fc.assert(
      fc.property(outline, real(-4, 4), real(-4, 4), (lens, x, y) => {
        const small = rectangle(x - 2, y - 3, x + 2, y + 3);
        expectNear(commonAreaMm2(lens, small), 24, 1e-9, 'mm2');
        expectNear(commonAreaMm2(lens, rectangle(-50, -50, 50, 50)), areaMm2(lens), 1e-6, 'mm2');
        expectNear(commonAreaMm2(lens, rectangle(40, 40, 50, 50)), 0, 1e-9, 'mm2');
      }),
    );
  });

  it('cut by a line, both parts make up the whole', () => {
    fc.assert(
      fc.property(outline, real(-20, 20), (lens, x) => {
        const left = commonAreaMm2(lens, rectangle(-60, -60, x, 60));
        expectNear(left + commonAreaMm2(lens, rectangle(x, -60, 60, 60)), areaMm2(lens), 1e-6, 'mm2');
      }),
    );
  });

  it('is found beneath the sides of the outline as by cutting it', () => {
    fc.assert(
      fc.property(
        outline,
        real(-30, 20),
        real(-25, 15),
        real(0.5, 30),
        real(0.5, 20),
        (lens, left, bottom, wide, high) => {
          const [right, top] = [left + wide, bottom + high];
          const cut = commonAreaMm2(lens, rectangle(left, bottom, right, top));
          expectNear(areaWithinMm2(lens, { left, right, bottom, top }), cut, 1e-6, 'mm2');
        },
      ),
    );
  });

  it('is signed by the sense of the corners', () => {
    expect(polygonAreaMm2(rectangle(0, 0, 3, 2))).toBe(6);
    expect(polygonAreaMm2(rectangle(0, 0, 3, 2).toReversed())).toBe(-6);
  });
});

describe('a horizontal chord', () => {
  it('is the vertical one of the lens turned by a quarter', () => {
    fc.assert(
      fc.property(outline, real(-0.95, 0.95), (lens, share) => {
        const y = share * box(lens).maxY;
        const across = horizontalChord(lens, y);
        const up = verticalChord(rotate(lens, 90), -y);
        expectNear(across?.leftMm ?? Number.NaN, up?.bottomMm ?? 0, 1e-6, 'mm');
        expectNear(across?.rightMm ?? Number.NaN, up?.topMm ?? 0, 1e-6, 'mm');
      }),
    );
  });

  it('is none above the lens', () => {
    expect(horizontalChord(ring(50), box(ring(50)).maxY + 0.1)).toBeNull();
  });
});

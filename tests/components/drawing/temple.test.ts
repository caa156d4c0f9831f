import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stoutness } from '../../../src/components/drawing/endPiece.ts';
import { frameShape } from '../../../src/components/drawing/frameDrawing.ts';
import { templeSide } from '../../../src/components/drawing/temple.ts';
import { templeLayout } from '../../../src/components/drawing/templeLayout.ts';
import { expectNear } from '../../optics/near.ts';
import { distanceTo, pathPoints } from './pathPoints.ts';
import { sampleFrame } from './sampleFrame.ts';

// Temples are 120 to 150 mm long (from memory); children's are shorter.
const anyLength = fc.integer({ min: 100, max: 155 });

describe('a temple from its side', () => {
  it('is as long along its middle as it is stamped', () => {
    fc.assert(
      fc.property(anyLength, fc.constantFrom(1.2, 4), (lengthMm, rimDepthMm) => {
        const { middle } = templeSide(lengthMm, stoutness(rimDepthMm));
        const length = middle.reduce((sum, p, i) => {
          const q = middle[i - 1] ?? p;
          return sum + Math.hypot(p.xMm - q.xMm, p.yMm - q.yMm);
        }, 0);
        expectNear(length, lengthMm, 0.05, 'mm');
      }),
    );
  });

  it('reaches its tip with its shape', () => {
    const { middle, path } = templeSide(145, stoutness(4));
    const tip = middle[middle.length - 1] ?? { xMm: 0, yMm: 0 };
    // The round end has the tip's half height as its radius.
    expect(distanceTo(pathPoints(path), tip)).toBeLessThan(stoutness(4).tipMm);
    expect(tip.yMm).toBeLessThan(0);
  });

  it('is laid below the front, which it does not touch', () => {
    const { frame, size } = sampleFrame();
    const shape = frameShape(frame, size);
    const layout = templeLayout(size, shape);
    expect(layout.yMm).toBeGreaterThan(shape.halfHeightMm + shape.stoutness.hingeMm);
    expect(layout.bottomMm).toBeGreaterThan(layout.yMm);
  });
});

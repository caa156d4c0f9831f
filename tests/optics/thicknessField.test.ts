import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keptOutline } from '../../src/optics/keptOutline.ts';
import { backFor, radiusOfPower } from '../../src/optics/surfacePower.ts';
import { edgeRise, profileOn, rise, thicknessField } from '../../src/optics/thicknessField.ts';
import { ring, usualLens } from './frames.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

describe('the rise of thickness over a lens', () => {
  it('is the same asked point by point and along the edge, tilted or not', () => {
    fc.assert(
      fc.property(usualLens, fc.boolean(), fc.boolean(), (lens, straight, progressive) => {
        const order = straight ? { ...lens, prism: { x: 0, y: 0 } } : lens;
        const front = { radiusMm: radiusOfPower(order.frontPowerD, order.index), conic: 0 };
        const back = backFor(order, 2);
        const profile = progressive
          ? ({ addD: 2, startYMm: 4, endYMm: -10, insetXMm: 2.5, surface: 'back' } as const)
          : null;
        const field = thicknessField(front, back, profileOn(front, back, profile, order.index));
        const shape = keptOutline(order.outline);
        const edge = order.outline.radiiMm.slice();
        const extremes = edgeRise(field, shape, order.reference, edge);
        const single = edge.map((_, i) =>
          rise(field, (shape.xMm[i] ?? 0) - order.reference.xMm, (shape.yMm[i] ?? 0) - order.reference.yMm),
        );
        fc.pre(single.every(Number.isFinite));
        expectNear(Math.max(...single.map((mm, i) => Math.abs(mm - (edge[i] ?? 0)))), 0, 1e-9, 'mm');
        expect(edge[extremes?.least ?? -1]).toBe(Math.min(...edge));
        expect(edge[extremes?.most ?? -1]).toBe(Math.max(...edge));
      }),
    );
  });

  it('of a back that bulges to the eye is that of its own sphere, point by point and along the edge', () => {
    fc.assert(
      fc.property(real(150, 900), real(60, 200), real(-6, 6), (backMm, frontMm, off) => {
        const radii = { generatingRadiusMm: -backMm, revolvedRadiusMm: -backMm, generatingMeridianDeg: 30 };
        const faces = [
          { radiusMm: frontMm, conic: 0 },
          { ...radii, tiltSlopeX: 0, tiltSlopeY: 0 },
        ] as const;
        const field = thicknessField(...faces, null);
        const shape = ring(50);
        const edge = shape.radiiMm.slice();
        edgeRise(field, keptOutline(shape), { xMm: off, yMm: 0 }, edge);
        const sag = (radiusMm: number, y2: number) => radiusMm - Math.sqrt(radiusMm ** 2 - y2);
        const mostMm = -sag(backMm, (25 - off) ** 2) - sag(frontMm, (25 - off) ** 2);
        expectNear(edge[0] ?? Number.NaN, mostMm, 1e-9, 'mm');
        expectNear(rise(field, 25 - off, 0), mostMm, 1e-9, 'mm');
      }),
    );
  });

  it('with an addition over the whole face is that of a steeper front or a flatter back', () => {
    fc.assert(
      fc.property(real(-18, 18), real(-18, 18), real(0.75, 3), fc.boolean(), (x, y, addD, onFront) => {
        const [front, back] = [100, 70];
        const added = addD / 500;
        const profile = { addD, startYMm: 50, endYMm: 45, insetXMm: 0 };
        const field = (frontMm: number, backMm: number, surface: 'front' | 'back' | null) => {
          const faces = [
            { radiusMm: frontMm, conic: 0 },
            {
              generatingRadiusMm: backMm,
              revolvedRadiusMm: backMm,
              generatingMeridianDeg: 0,
              tiltSlopeX: 0,
              tiltSlopeY: 0,
            },
          ] as const;
          return thicknessField(...faces, profileOn(...faces, surface && { ...profile, surface }, 1.5));
        };
        const steeper = onFront
          ? field(1 / (1 / front + added), back, null)
          : field(front, 1 / (1 / back - added), null);
        const progressive = field(front, back, onFront ? 'front' : 'back');
        expectNear(rise(progressive, x, y), rise(steeper, x, y), 1e-5, 'mm');
      }),
    );
  });

  it('is 0 at the reference point, whatever the lens', () => {
    fc.assert(
      fc.property(usualLens, (order) => {
        const front = { radiusMm: radiusOfPower(order.frontPowerD, order.index), conic: 0 };
        expectNear(rise(thicknessField(front, backFor(order, 2), null), 0, 0), 0, 1e-12, 'mm');
      }),
    );
  });

  it('is refused as a whole where one point of the edge is out of reach', () => {
    fc.assert(
      fc.property(real(30, 49), (radiusMm) => {
        const front = { radiusMm: 100, conic: 0 };
        const surface = {
          generatingRadiusMm: radiusMm,
          revolvedRadiusMm: radiusMm,
          generatingMeridianDeg: 0,
        };
        const field = thicknessField(front, { ...surface, tiltSlopeX: 0, tiltSlopeY: 0 }, null);
        const shape = ring(100);
        expect(edgeRise(field, keptOutline(shape), { xMm: 0, yMm: 0 }, shape.radiiMm.slice())).toBeNull();
      }),
    );
  });
});

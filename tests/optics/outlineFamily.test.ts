import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { box, radiusAt } from '../../src/optics/outline.ts';
import { fitFamily, OUTLINE_FAMILIES } from '../../src/optics/outlineFamily.ts';
import { shape } from './frames.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

const family = fc.constantFrom(...OUTLINE_FAMILIES);

describe('a shape fitted to A, B and ED', () => {
  it('has that box to 0.005 mm and that ED to 0.01 mm, or the answer says which EDs there are', () => {
    fc.assert(
      fc.property(family, real(40, 60), real(25, 50), real(40, 75), (name, aMm, bMm, edMm) => {
        const fit = fitFamily(name, { aMm, bMm, edMm });
        if (fit.ok) {
          const b = box(fit.outline);
          expect(fit.outline.radiiMm).toHaveLength(360);
          expectNear(b.aMm, aMm, 0.005, 'mm');
          expectNear(b.bMm, bMm, 0.005, 'mm');
          expectNear(b.edMm, edMm, 0.01, 'mm');
          expectNear(b.minX + b.maxX, 0, 0.005, 'mm');
          expectNear(b.minY + b.maxY, 0, 0.005, 'mm');
        } else {
          expect(fit.reason).toBe(edMm < fit.leastEdMm ? 'ed-too-small' : 'ed-too-large');
          expect(edMm < fit.leastEdMm || edMm > fit.mostEdMm).toBe(true);
          const nearest = edMm < fit.leastEdMm ? fit.leastEdMm : fit.mostEdMm;
          expect(fitFamily(name, { aMm, bMm, edMm: nearest }).ok).toBe(true);
        }
      }),
    );
  });

  it('is refused where ED is shorter than A or longer than the diagonal', () => {
    for (const name of OUTLINE_FAMILIES) {
      expect(fitFamily(name, { aMm: 50, bMm: 40, edMm: 49 })).toMatchObject({ reason: 'ed-too-small' });
      expect(fitFamily(name, { aMm: 50, bMm: 40, edMm: 65 })).toMatchObject({ reason: 'ed-too-large' });
    }
  });

  it('is refused for a size that is no size', () => {
    for (const bMm of [0, -4, Number.NaN, Number.POSITIVE_INFINITY])
      expect(fitFamily('round', { aMm: 50, bMm, edMm: 52 })).toMatchObject({ reason: 'size-not-positive' });
  });

  it('differs from every other family by more than 0.5 mm somewhere', () => {
    const shapes = OUTLINE_FAMILIES.map((name) => shape(name, 51, 40, 55));
    shapes.forEach((one, i) => {
      for (const other of shapes.slice(i + 1)) {
        const apart = one.radiiMm.map((r, k) => Math.abs(r - (other.radiiMm[k] ?? 0)));
        expect(Math.max(...apart)).toBeGreaterThan(0.5);
      }
    });
  });
});

describe('the character of the families, right lens', () => {
  it('lifts the upper temporal corner of an upswept one', () => {
    const upswept = shape('upswept', 52, 38, 56);
    expect(radiusAt(upswept, 145)).toBeGreaterThan(radiusAt(upswept, 35) + 2);
  });

  it('lets a teardrop fall to the temporal side below', () => {
    const drop = shape('teardrop', 58, 49, 62);
    expect(radiusAt(drop, 225)).toBeGreaterThan(radiusAt(drop, 315) + 2);
  });

  it('makes a panto wider above its middle than below', () => {
    const panto = shape('panto', 48, 42, 50.5);
    expect(radiusAt(panto, 30)).toBeGreaterThan(radiusAt(panto, 330) + 1);
  });
});

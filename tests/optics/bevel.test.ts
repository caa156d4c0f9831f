import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Bevel, bevelWidthMm, placeBevel } from '../../src/optics/bevel.ts';
import { finishLens } from '../../src/optics/finishedLens.ts';
import { frontAtEdgeMm } from '../../src/optics/thicknessMap.ts';
import { usualLens } from './frames.ts';
import { expectNear } from './near.ts';
import { real } from './realistic.ts';

const bevel = (changes: Partial<Bevel>): Bevel => ({
  heightMm: 0.6,
  angleDeg: 110,
  follows: 'share',
  shareFromFront: 0.4,
  curveRadiusMm: 100,
  ...changes,
});
const RIM = { depthMm: 2.4, grooveFromFrontMm: 1.2 };

const flat = (mm: number) => ({
  edgeMm: new Array<number>(36).fill(mm),
  frontMm: new Array<number>(36).fill(4),
  radiiMm: new Array<number>(36).fill(25),
});

describe('the foot of a bevel', () => {
  it('of 90 degrees is twice as wide as high', () => {
    expectNear(bevelWidthMm({ heightMm: 0.6, angleDeg: 90 }), 1.2, 1e-12, 'mm');
  });
});

describe('what shows beyond the rim', () => {
  it('of an edge of 5 with the apex at 0.4: 0.8 in front and 1.8 behind a rim of 1.2 and 1.2', () => {
    const placed = placeBevel(flat(5), bevel({}), RIM);
    expectNear(placed?.mostInFront.mm ?? Number.NaN, 0.8, 1e-9, 'mm');
    expectNear(placed?.mostBehind.mm ?? Number.NaN, 1.8, 1e-9, 'mm');
    expect(placed?.tooThin).toBeNull();
  });

  it('is nothing where the rim is deeper than the edge', () => {
    expect(placeBevel(flat(2), bevel({}), RIM)).toMatchObject({
      mostInFront: { mm: 0 },
      mostBehind: { mm: 0 },
    });
  });

  it('names an edge narrower than the foot', () => {
    const edge = flat(3);
    edge.edgeMm[9] = 1;
    const { tooThin } = placeBevel(edge, bevel({ angleDeg: 90 }), RIM) ?? {};
    expect(tooThin).toEqual({ missingMm: expect.closeTo(0.2, 9), atDeg: 90 });
  });

  it('cannot be told where the curve of the rim does not reach', () => {
    expect(placeBevel(flat(5), bevel({ follows: 'curve', curveRadiusMm: 20 }), RIM)).toBeNull();
  });
});

describe('laws of the bevel', () => {
  const edgeOf = (lens: Parameters<typeof finishLens>[0]) => {
    const made = finishLens(lens);
    if (!made.ok) return null;
    return {
      edgeMm: made.lens.edgeMm,
      frontMm: frontAtEdgeMm(lens, made.lens),
      radiiMm: lens.outline.radiiMm,
    };
  };

  it('front part, apex and back part make up the edge; what shows is what the rim does not hide', () => {
    fc.assert(
      fc.property(
        usualLens,
        real(0.2, 0.8),
        real(60, 300),
        fc.boolean(),
        (lens, shareFromFront, curveRadiusMm, curved) => {
          const edge = edgeOf(lens);
          fc.pre(edge !== null);
          const placed = placeBevel(
            edge,
            bevel({ shareFromFront, curveRadiusMm, follows: curved ? 'curve' : 'share' }),
            RIM,
          );
          fc.pre(placed !== null);
          placed.apexFromFrontMm.forEach((mm, i) => {
            if (i % 40 !== 0) return;
            const behind = (edge.edgeMm[i] ?? 0) - mm;
            expectNear(placed.inFrontMm[i] ?? Number.NaN, Math.max(0, mm - 1.2), 1e-9, 'mm');
            expectNear(placed.behindMm[i] ?? Number.NaN, Math.max(0, behind - 1.2), 1e-9, 'mm');
          });
          expect(placed.mostBehind.mm).toBe(Math.max(...placed.behindMm));
        },
      ),
    );
  });

  it('a deeper rim never lets more show', () => {
    fc.assert(
      fc.property(usualLens, real(0.1, 2), (lens, deeper) => {
        const edge = edgeOf(lens);
        fc.pre(edge !== null);
        const [thin, deep] = [RIM, { depthMm: 2.4 + 2 * deeper, grooveFromFrontMm: 1.2 + deeper }].map(
          (rim) => placeBevel(edge, bevel({}), rim),
        );
        expect(deep?.mostBehind.mm).toBeLessThanOrEqual(thin?.mostBehind.mm ?? 0);
        expect(deep?.mostInFront.mm).toBeLessThanOrEqual(thin?.mostInFront.mm ?? 0);
      }),
    );
  });

  it('following a curve, the apex lies on one sphere', () => {
    fc.assert(
      fc.property(usualLens, real(60, 300), (lens, curveRadiusMm) => {
        const edge = edgeOf(lens);
        fc.pre(edge !== null);
        const placed = placeBevel(edge, bevel({ follows: 'curve', curveRadiusMm }), RIM);
        fc.pre(placed !== null);
        const depth = placed.apexFromFrontMm.map((mm, i) => {
          const r = edge.radiiMm[i] ?? 0;
          return mm + (edge.frontMm[i] ?? 0) - curveRadiusMm + Math.sqrt(curveRadiusMm ** 2 - r * r);
        });
        expectNear(Math.max(...depth) - Math.min(...depth), 0, 1e-6, 'mm');
      }),
    );
  });

  it('following the front of a centred round lens is the same share everywhere', () => {
    const edge = { ...flat(4), frontMm: new Array<number>(36).fill(100 - Math.sqrt(100 * 100 - 25 * 25)) };
    const placed = placeBevel(edge, bevel({ follows: 'curve' }), RIM);
    for (const mm of placed?.apexFromFrontMm ?? []) expectNear(mm, 1.6, 1e-9, 'mm');
  });
});

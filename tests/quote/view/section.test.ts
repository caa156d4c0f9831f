import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sectionView } from '../../../src/quote/view/section.ts';
import { expectNear } from '../../optics/near.ts';
import { anyPackage, judged, mirroredPackage, situationOf } from './situations.ts';

const eyes = ['right', 'left'] as const;

describe('a section', () => {
  it('is as thick at its thickest edge and its centre as the answer says', () => {
    fc.assert(
      fc.property(anyPackage, (change) => {
        const { situation, answer } = judged(change);
        const view = sectionView(situation);
        if (view === null) return;
        for (const eye of eyes) {
          expectNear(view[eye].thick.mm, answer[eye]?.edgeThicknessMm.thickest.mm ?? 0, 0.011, 'mm');
          expect(view[eye].centreMm).toBe(answer[eye]?.centreThicknessMm);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('runs through the centre with the thickness that is told for it', () => {
    fc.assert(
      fc.property(anyPackage, (change) => {
        const view = sectionView(situationOf(change));
        if (view === null) return;
        for (const eye of eyes) {
          const { sMm, thicknessMm, centreMm, thick, other } = view[eye];
          if (thick.sMm < 1 || other.sMm > -1) continue;
          const i = sMm.findIndex((s) => s > 0);
          const [a = 0, b = 0] = [sMm[i - 1], sMm[i]];
          const [ta = 0, tb = 0] = [thicknessMm[i - 1], thicknessMm[i]];
          // Straight between two places about 1 mm apart.
          expectNear(ta + ((tb - ta) * -a) / (b - a), centreMm, 0.05, 'mm');
        }
      }),
      { numRuns: 60 },
    );
  });

  it('is at no place thinner than nothing, nor at its ends other than its surfaces', () => {
    fc.assert(
      fc.property(anyPackage, (change) => {
        const view = sectionView(situationOf(change));
        if (view === null) return;
        for (const { thicknessMm, thick, other } of [view.right, view.left]) {
          expect(Math.min(...thicknessMm)).toBeGreaterThan(0);
          expect([thicknessMm[0], thicknessMm.at(-1)]).toEqual([other.mm, thick.mm]);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('is the same for both of two mirrored eyes', () => {
    fc.assert(
      fc.property(mirroredPackage, (change) => {
        const view = sectionView(situationOf(change));
        if (view === null) return;
        // Which of two equally thick places is found first may differ; the thickness does not.
        expectNear(view.left.thick.mm, view.right.thick.mm, 0.011, 'mm');
        expectNear(view.left.centreMm, view.right.centreMm, 0.011, 'mm');
      }),
      { numRuns: 40 },
    );
  });

  it('laid over itself is itself', () => {
    const situation = situationOf({ lenses: { material: 'thin' } });
    const view = sectionView(situation, situation);
    expect(view?.right.compared?.thicknessMm).toEqual(view?.right.thicknessMm);
    expect(view?.right.compared?.massG).toBe(view?.right.massG);
  });

  it('is not drawn where a lens is missing', () => {
    expect(sectionView(situationOf({ prescription: { right: {}, left: {} } }))).toBeNull();
  });
});

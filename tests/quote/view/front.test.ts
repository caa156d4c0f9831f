import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type EyeFront, frontView } from '../../../src/quote/view/front.ts';
import { expectNear } from '../../optics/near.ts';
import { anyPackage, mirroredPackage, situationOf } from './situations.ts';

const places = ({ outline }: EyeFront) =>
  Array.from({ length: outline.length / 2 }, (_, i) => [outline[2 * i], outline[2 * i + 1]] as const);

describe('a pair from the front', () => {
  it('has each pupil its PD from the bridge and its height above the lowest tangent', () => {
    fc.assert(
      fc.property(anyPackage, (change) => {
        const view = frontView(situationOf(change));
        for (const eye of [view.right, view.left]) {
          const { pupil, pdMm, heightMm, centreXMm } = eye;
          if (pupil === null || pdMm === null || heightMm === null) throw new Error('All is measured.');
          expectNear(Math.abs(centreXMm + pupil.xMm), pdMm, 0.01, 'mm');
          expectNear(pupil.yMm + view.bMm / 2, heightMm, 0.01, 'mm');
        }
        expect(view.right.centreXMm).toBeLessThan(0);
        expect(view.left.centreXMm).toBe(-view.right.centreXMm);
      }),
      { numRuns: 40 },
    );
  });

  it('mirrors where the eyes do', () => {
    fc.assert(
      fc.property(mirroredPackage, (change) => {
        const { right, left } = frontView(situationOf(change));
        const other = (at: { xMm: number; yMm: number } | null | undefined) =>
          at ? { xMm: at.xMm === 0 ? 0 : -at.xMm, yMm: at.yMm } : at;
        expect(left.pupil).toEqual(other(right.pupil));
        expect(left.reference).toEqual(other(right.reference));
        expect(left.cross).toEqual(other(right.cross));
        expect(left.corridor?.to).toEqual(other(right.corridor?.to));
        expect(left.segment?.top).toEqual(other(right.segment?.top));
        expect(left.blank?.middle).toEqual(other(right.blank?.middle));
      }),
      { numRuns: 40 },
    );
  });

  it('draws the blank so that it covers the lens by what is to spare, or falls short by as much', () => {
    fc.assert(
      fc.property(anyPackage, (change) => {
        const view = frontView(situationOf(change));
        for (const eye of [view.right, view.left]) {
          const { blank } = eye;
          if (blank === null) continue;
          const far = Math.max(
            ...places(eye).map(([x = 0, y = 0]) => Math.hypot(x - blank.middle.xMm, y - blank.middle.yMm)),
          );
          expectNear(blank.usedMm / 2 - view.blankMarginMm - far, blank.spareMm, 0.05, 'mm');
        }
      }),
      { numRuns: 40 },
    );
  });

  it('puts the end of a corridor its length below the cross', () => {
    const { right } = frontView(
      situationOf({
        prescription: { right: { sphere: 1, add: 2 }, left: { sphere: 1, add: 2 } },
        fit: { fittingHeight: { right: 25, left: 25 } },
        lenses: { use: 'all', design: 'long' },
      }),
    );
    expect(right.corridor).toMatchObject({ from: { yMm: 0 }, to: { yMm: -14 }, leftPercent: 100 });
  });

  it('shows no pupil that was not measured, and no PD for lenses without power', () => {
    expect(frontView(situationOf({})).right).toMatchObject({ pdMm: 35, pupil: null, heightMm: null });
    const none = situationOf({ prescription: null, lenses: { use: 'none', design: 'none' } });
    expect(frontView(none)).toMatchObject({ pdIs: 'none', right: { pdMm: null, pupil: null, prism: null } });
  });

  it('has the base of a prism where it was prescribed, in the front view', () => {
    const prism = [{ amount: 2, base: 'in' as const }];
    const situation = situationOf({
      prescription: { right: { sphere: 1, prism }, left: { sphere: 1, prism } },
    });
    const { right, left } = frontView(situation);
    expect([right.prism, left.prism]).toEqual([
      { amount: 2, baseDeg: 0 },
      { amount: 2, baseDeg: 180 },
    ]);
  });
});

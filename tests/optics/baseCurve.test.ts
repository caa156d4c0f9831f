import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chooseBaseCurve, vogelCurveD } from '../../src/optics/baseCurve.ts';
import { sphere } from './frames.ts';
import { power, real } from './realistic.ts';

const OFFERED = [0.5, 2, 4, 6, 8, 10];
const ask = (changes: Partial<Parameters<typeof chooseBaseCurve>[0]>) =>
  chooseBaseCurve({ offeredD: OFFERED, right: null, left: null, index: 1.53, frameCurveD: null, ...changes });

describe("Vogel's rule", () => {
  it.each([
    // From memory, Brooks & Borish
    [-4, 4],
    [-8, 2],
    [2, 8],
    [0, 6],
  ])('gives for %d the curve %d', (powerD, curveD) => {
    expect(vogelCurveD(powerD)).toBe(curveD);
  });

  it('rises with the power', () => {
    fc.assert(
      fc.property(real(-20, 20), real(0.1, 5), (powerD, more) => {
        expect(vogelCurveD(powerD + more)).toBeGreaterThan(vogelCurveD(powerD));
      }),
    );
  });
});

describe('the base curve of a pair', () => {
  it('is one for both eyes, led by the more plus one', () => {
    expect(ask({ right: sphere(-4), left: sphere(2) })).toEqual({
      ok: true,
      right: { baseCurveD: 8, wishedD: 8, ledBy: 'left', reason: 'power' },
      left: { baseCurveD: 8, wishedD: 8, ledBy: 'left', reason: 'power' },
    });
  });

  it('is each its own where their wishes are further apart than the shop allows', () => {
    const answer = ask({ right: sphere(-4), left: sphere(2), sharedUpToD: 3 });
    expect(answer).toMatchObject({ right: { baseCurveD: 4, ledBy: 'right' }, left: { baseCurveD: 8 } });
    expect(ask({ right: sphere(-4), left: sphere(2), sharedUpToD: 4 })).toMatchObject({
      right: { baseCurveD: 8 },
    });
  });

  it('goes by the spherical equivalent', () => {
    expect(ask({ right: { sphereD: 1, cylinderD: -4, axisDeg: 10 } })).toMatchObject({
      right: { wishedD: 5.5, baseCurveD: 6 },
      left: null,
    });
  });

  it('is the flatter of two that are as near', () => {
    expect(ask({ right: sphere(1) })).toMatchObject({ right: { wishedD: 7, baseCurveD: 6 } });
  });

  it('stays within reach of the rim, and says when the rim moved it', () => {
    expect(ask({ right: sphere(-2), frameCurveD: 8 })).toMatchObject({
      right: { baseCurveD: 6, reason: 'frame' },
    });
    expect(ask({ right: sphere(-2), frameCurveD: 5 })).toMatchObject({
      right: { baseCurveD: 4, reason: 'power' },
    });
    expect(ask({ right: sphere(-2), frameCurveD: 13 })).toMatchObject({
      right: { baseCurveD: 10, reason: 'out-of-reach' },
    });
  });

  it('reads lens and rim on the same tool', () => {
    // By hand: 3.00 D in 1.738 reads 3 x 0.53 / 0.738 = 2.15 D, 1.85 from the rim; the rim itself is 5.57 D in it.
    const thin = { offeredD: [2, 3, 4.5, 6], right: sphere(-18), index: 1.738, frameCurveD: 4 };
    expect(ask(thin)).toMatchObject({ right: { baseCurveD: 3, reason: 'frame' } });
  });

  it('is the only one there is', () => {
    expect(ask({ offeredD: [4], right: sphere(-8) })).toMatchObject({
      right: { baseCurveD: 4, reason: 'only' },
    });
  });

  it('is refused where nothing is offered or no power is known', () => {
    expect(ask({ offeredD: [], right: sphere(1) })).toEqual({ ok: false, reason: 'none-offered' });
    expect(ask({})).toEqual({ ok: false, reason: 'no-power' });
  });

  it('is always an offered one, no offered one nearer, and does not depend on the order offered', () => {
    fc.assert(
      fc.property(power, power, (right, left) => {
        const answer = ask({ right, left });
        expect(ask({ right, left, offeredD: OFFERED.toReversed() })).toEqual(answer);
        if (!answer.ok || !answer.right || !answer.left) throw new Error('two eyes have two curves');
        const { baseCurveD, wishedD } = answer.right;
        expect(answer.left.baseCurveD).toBe(baseCurveD);
        const nearest = Math.min(...OFFERED.map((curve) => Math.abs(curve - wishedD)));
        expect(OFFERED).toContain(baseCurveD);
        expect(Math.abs(baseCurveD - wishedD)).toBe(nearest);
      }),
    );
  });
});

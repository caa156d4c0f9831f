import { describe, expect, it } from 'vitest';
import { monocular, placeLens } from '../../src/quote/placement.ts';
import type { FitRequest } from '../../src/quote/request.ts';
import type { FrameSituation } from '../../src/rules/situation.ts';
import { design, offer } from '../fixtures/bench.ts';

const { habits } = offer.shop;
const frame = { aMm: 52, bMm: 38, dblMm: 18 } as FrameSituation;
const distance = { use: 'distance', design } as const;

const place = (eye: 'right' | 'left', fit: FitRequest, lenses: Parameters<typeof placeLens>[3] = distance) =>
  placeLens(eye, frame, fit, lenses, 0, habits);

describe('the place of a lens', () => {
  it('is decentred by the boxing rule, inwards towards the nose', () => {
    // A 52, DBL 18, PD 31.5 R / 32.5 L: 3.5 in, 2.5 in (ISO 8624; computed).
    const fit = { pd: { right: 31.5, left: 32.5 } };
    expect(place('right', fit).reference).toEqual({ xMm: 3.5, yMm: 0 });
    expect(place('left', fit).reference).toEqual({ xMm: -2.5, yMm: 0 });
  });

  it('is raised by the height less half of B', () => {
    // B 38, height 22: 3 up (computed).
    const fit = { pd: 64, fittingHeight: { right: 22, left: 22 } };
    expect(place('right', fit).reference?.yMm).toBe(3);
  });

  it('goes 1 mm below the pupil for every 2 degrees of tilt where the shop says so', () => {
    const fit = { pd: 64, fittingHeight: { right: 22, left: 22 }, pantoscopicTilt: 8 };
    const lowered = { ...habits, singleVisionHeight: 'lowered-for-tilt' } as const;
    expect(placeLens('right', frame, fit, distance, 0, lowered).reference?.yMm).toBe(-1);
  });

  it('of a progressive hangs the prism reference point below the cross', () => {
    const progressive = offer.designs.find(({ kind }) => kind === 'progressive');
    if (!progressive) throw new Error('The bench has a progressive.');
    const fit = { pd: 64, fittingHeight: { right: 22, left: 22 } };
    const { cross, reference } = place('right', fit, { use: 'all', design: progressive });
    expect(cross).toEqual({ xMm: 3, yMm: 3 });
    expect(reference).toEqual({ xMm: 3, yMm: -1 });
    expect(place('right', { pd: 64 }, { use: 'all', design: progressive }).reference).toBeNull();
  });

  it('for reading follows the eyes inwards', () => {
    // CD 63, W 400, s 27, F 0: NCD 59.02 (computed from the published formula); half of it an eye.
    const { pdMm } = place('right', { pd: 63 }, { use: 'near', design });
    expect(pdMm).toBe(29.51);
    expect(place('right', { pd: 63, nearPd: 60 }, { use: 'near', design }).pdMm).toBe(30);
  });

  it('waits for a PD, and needs none without power', () => {
    expect(place('right', {}).reference).toBeNull();
    expect(place('right', {}, { use: 'none', design }).reference).toEqual({ xMm: 0, yMm: 0 });
  });

  it('halves one number', () => {
    expect(monocular(63)).toEqual({ right: 31.5, left: 31.5 });
  });
});

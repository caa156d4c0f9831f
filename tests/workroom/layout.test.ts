import { describe, expect, it, test } from 'vitest';
import type { PairRequest } from '../../src/quote/request.ts';
import { round2 } from '../../src/rules/round.ts';
import { layoutPair } from '../../src/workroom/layout.ts';
import { judgedOf, PAIRS, type PairName, shop } from './jobs.ts';

const laid = (pair: PairRequest) => layoutPair(judgedOf(pair), shop.workroom);
const own = (box: { a: number; b: number; dbl: number }, fit: PairRequest['fit']): PairRequest => ({
  ...PAIRS.own,
  frame: { ...box, mounting: 'full' },
  ...(fit === undefined ? {} : { fit }),
});

describe('decentration', () => {
  it('is half of frame PD less the monocular PD, inwards', () => {
    // C: A 52, DBL 18, PD 31.5 R / 32.5 L: 3.5 in, 2.5 in
    const layout = laid(own({ a: 52, b: 36, dbl: 18 }, { pd: { right: 31.5, left: 32.5 } }));
    expect(layout.framePdMm).toBe(70);
    expect(layout.right?.reference.inMm).toBe(3.5);
    expect(layout.left?.reference.inMm).toBe(2.5);
  });

  it('is the height less half of B, upwards', () => {
    // C: A 54, B 38, height 22: 3 up. A cross is not lowered for tilt.
    const layout = laid({
      ...PAIRS.progressive,
      frame: { a: 54, b: 38, dbl: 18, mounting: 'full' },
      fit: { pd: { right: 32, left: 32 }, fittingHeight: { right: 22, left: 22 } },
    });
    expect(layout.right?.cross).toMatchObject({ upMm: 3, heightMm: 22 });
  });
});

test.each(Object.keys(PAIRS) as PairName[])(
  '%s: heights from the lowest point and from the datum agree',
  (name) => {
    const layout = laid(PAIRS[name]);
    for (const eye of [layout.right, layout.left]) {
      if (eye === null) throw new Error('This pair of the shop can be cut.');
      const places = [eye.reference, eye.cross, eye.segment].filter((place) => place !== null);
      for (const { heightMm, upMm } of places) expect(heightMm).toBe(round2(upMm + layout.bMm / 2));
    }
  },
);

describe('the places of a lens', () => {
  it('have the cross of a progressive above its prism reference point by the figure of the design', () => {
    const { right } = laid(PAIRS.progressive);
    const below = shop.designs.find(({ id }) => id === 'progressive-middle')?.corridor?.referenceBelowCrossMm;
    expect((right?.cross?.heightMm ?? 0) - (right?.reference.heightMm ?? 0)).toBe(below);
    expect(right?.cross?.heightMm).toBe(22);
  });

  it('have a segment top at the segment height, in for the near PD', () => {
    const { right, left, framePdMm } = laid(PAIRS.bifocal);
    expect(right?.segment).toMatchObject({ heightMm: 17, inMm: framePdMm / 2 - 29 });
    expect(left?.segment).toMatchObject({ heightMm: 17, inMm: framePdMm / 2 - 30 });
  });

  it('tell the holes of both lenses alike, each with the lens that is left there', () => {
    const { right, left } = laid(PAIRS.drilled);
    if (right?.edge.kind !== 'drill' || left?.edge.kind !== 'drill') throw new Error('The frame is drilled.');
    const places = (holes: typeof right.edge.holes) => holes.map(({ thicknessMm: _, ...rest }) => rest);
    expect(places(left.edge.holes)).toEqual(places(right.edge.holes));
    const nasal = right.edge.holes.find(({ side }) => side === 'nasal');
    expect(nasal).toMatchObject({ fromBoxMm: 3.6, upMm: 4.5, diameterMm: 1.4 });
    const least = shop.materials.find(({ id }) => id === 'thiourethane-1-67')?.leastMm.hole ?? 0;
    for (const { thicknessMm } of [...right.edge.holes, ...left.edge.holes])
      expect(thicknessMm).toBeGreaterThanOrEqual(least - 0.05);
  });

  it('have the edge that the quote promised', () => {
    for (const name of ['single', 'progressive', 'bifocal', 'drilled'] as const) {
      const judged = judgedOf(PAIRS[name]);
      for (const eye of ['right', 'left'] as const) {
        const worked = layoutPair(judged, shop.workroom)[eye]?.worked;
        const promised = judged.answer[eye]?.edgeThicknessMm;
        expect(Math.max(...(worked?.edge.edgeMm ?? []))).toBeCloseTo(promised?.thickest.mm ?? 0, 2);
        expect(Math.min(...(worked?.edge.edgeMm ?? []))).toBeCloseTo(promised?.thinnest.mm ?? 0, 2);
      }
    }
  });
});

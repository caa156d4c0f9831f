import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Catalogue, Offer } from '../../src/catalogue/catalogue.ts';
import type { Frame } from '../../src/catalogue/frame.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { frameJudge } from '../../src/quote/frameList.ts';
import { receiveFrame, sendFrame } from '../../src/quote/frameListData.ts';
import type { ListRequest } from '../../src/quote/frameListRequest.ts';
import { thickestOf } from '../../src/quote/frameListTry.ts';
import { quote } from '../../src/quote/quote.ts';
import { type Package, packagesOf } from '../../src/quote/space.ts';
import { offer as bench, sun } from '../fixtures/bench.ts';

const DATE = '2026-11-25';

function demonstration(): Catalogue {
  const reading = loadCatalogue('content');
  if (!reading.ok) throw new Error('The demonstration shop has faults: run npm run check.');
  return reading.catalogue;
}
const shop = demonstration();

/** Chosen by place, so that a failure prints a number and not a whole frame. */
const places = fc.nat(shop.frames.length - 1);
const frameAt = (place: number) => shop.frames[place] as Frame;

const eighths = (from: number, to: number) => fc.integer({ min: from * 8, max: to * 8 }).map((n) => n / 8);
const requests = (least: number, most: number) =>
  fc
    .record({
      right: eighths(least, most),
      left: eighths(least, most),
      cylinder: fc.constantFrom(0, -0.75, -2.5),
      add: fc.constantFrom(null, 1.5, 2.25),
      use: fc.constantFrom('distance' as const, 'all' as const, 'near' as const, 'none' as const),
      wearer: fc.constantFrom(null, 'adult' as const, 'child' as const),
      pd: fc.constantFrom(28, 31.5, 35),
      height: fc.constantFrom(14, 20, 24),
    })
    .map(
      ({ right, left, cylinder, add, use, wearer, pd, height }): ListRequest => ({
        date: DATE,
        wearer,
        use,
        prescription: {
          right: { sphere: right, add, ...(cylinder === 0 ? {} : { cylinder, axis: 20 }) },
          left: { sphere: left, add },
          vertexDistance: 12,
          issued: '2026-06-01',
        },
        fit: { pd: { right: pd, left: pd }, fittingHeight: { right: height, left: height } },
      }),
    );

/** Every package that the list may look at, by the search that looks at all. */
function everyPackage(offer: Offer, asked: ListRequest, frame: Frame): readonly Package[] {
  const { wearer, use, prescription, fit, ...terms } = asked;
  const [design, material] = [offer.designs[0]?.id ?? '', offer.materials[0]?.id ?? ''];
  return frame.sizes
    .flatMap((size) => frame.colourways.map((colourway) => ({ size, colourway })))
    .flatMap(({ size, colourway }) => {
      const pair = {
        frame: frame.id,
        size: size.id,
        colourway: colourway.code,
        wearer: wearer ?? frame.wearer,
        prescription,
        fit,
        lenses: { use, design, material, tint: null, coating: null },
      };
      return packagesOf({ ...offer, frames: [frame] }, { ...terms, pairs: [pair] }, 0);
    })
    .filter(
      ({ situation: { design: of, tint } }) =>
        of.segment === null &&
        of.uses.includes(use) &&
        (frame.sun
          ? tint?.states.some(({ transmittance }) => transmittance <= 0.18)
          : tint?.kind === 'clear'),
    );
}

/** The list's answer against the best of all packages. */
function expectBest(offer: Offer, asked: ListRequest, frame: Frame): void {
  const answer = frameJudge(offer, asked)(frame);
  const all = everyPackage(offer, asked, frame);
  const able = all.filter(({ verdict }) => verdict !== 'refused');
  if (able.length === 0) {
    expect(answer?.verdict ?? 'refused').toBe('refused');
    return;
  }
  const least = Math.min(...able.map(({ totalMinor }) => totalMinor ?? 0));
  const cheapest = able.filter(({ totalMinor }) => totalMinor === least);
  const plain = cheapest.filter(({ verdict }) => verdict === 'makeable');
  const best = plain.length > 0 ? plain : cheapest;
  const thinnest = Math.min(...best.map(({ situation }) => thickestOf(situation) ?? 0));
  expect([answer?.verdict, answer?.totalMinor, answer?.thickestMm]).toEqual([
    best[0]?.verdict,
    least,
    thinnest,
  ]);
}

describe('the best package of a frame', () => {
  it('is the best of all its packages, on the bench', () => {
    const frames = [...bench.frames, { ...(bench.frames[0] as Frame), sun: true }];
    const offer = { ...bench, tints: [...bench.tints, sun('dark', 0.16)] };
    fc.assert(
      fc.property(requests(-14, 12), fc.nat(frames.length - 1), (asked, at) =>
        expectBest(offer, asked, frames[at] as Frame),
      ),
      { numRuns: 60 },
    );
  });

  it('is the best of all its packages, in the demonstration shop', () => {
    fc.assert(
      fc.property(requests(-12, 9), places, (asked, place) => expectBest(shop, asked, frameAt(place))),
      { numRuns: 15 },
    );
  });

  it('is answered by the one door with the same verdict, price, edge and findings', () => {
    fc.assert(
      fc.property(requests(-12, 9), places, (asked, place) => {
        const answer = frameJudge(shop, asked)(frameAt(place));
        if (answer === null) return;
        const reply = quote(shop, { date: asked.date, pairs: [answer.request] });
        if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
        const [pair] = reply.answer.pairs;
        expect(answer.verdict).toBe(reply.answer.verdict);
        expect(answer.findings).toEqual(pair?.findings.filter(({ level }) => level !== 'note'));
        if (answer.verdict !== 'refused') expect(answer.totalMinor).toBe(reply.answer.price.total);
        const edges = [pair?.right, pair?.left].map((lens) => lens?.edgeThicknessMm.thickest.mm);
        expect(answer.thickestMm).toBe(edges.includes(undefined) ? null : Math.max(...(edges as number[])));
      }),
      { numRuns: 60 },
    );
  });

  it('is looked for only in the sizes and colourways asked for', () => {
    const asked: ListRequest = {
      date: DATE,
      wearer: 'adult',
      use: 'distance',
      prescription: { right: { sphere: -2 }, left: { sphere: -2 } },
      fit: { pd: 63 },
    };
    const judge = frameJudge(shop, asked);
    for (const frame of shop.frames)
      for (const size of frame.sizes)
        expect(judge(frame, ({ id }) => id === size.id)?.request.size).toBe(size.id);
    expect(judge(shop.frames[0] as Frame, () => false)).toBeNull();
  });

  it('takes the pupil on the datum of the shop where a design needs a height and none was measured', () => {
    const asked: ListRequest = {
      date: DATE,
      wearer: 'adult',
      use: 'all',
      prescription: { right: { sphere: -2, add: 2 }, left: { sphere: -2, add: 2 } },
      fit: { pd: 63 },
    };
    for (const frame of shop.frames) {
      const { request } = frameJudge(shop, asked)(frame) ?? {};
      const bMm = frame.sizes.find(({ id }) => id === request?.size)?.bMm ?? Number.NaN;
      const heightMm = bMm / 2 + shop.shop.habits.datumAboveCentreMm;
      expect(request?.fit?.fittingHeight).toEqual({ right: heightMm, left: heightMm });
    }
  });
});

describe('a frame as lists send it', () => {
  it('has the verdict and price of the whole frame, and its edge to 0.05 mm', () => {
    const powers = fc.constantFrom(-10, -9.5, -6, -3.25, -1, 2, 4.5, 6);
    fc.assert(
      fc.property(powers, places, (sphere, place) => {
        const frame = frameAt(place);
        const eyes = { right: { sphere, cylinder: -0.75, axis: 170 }, left: { sphere: sphere + 0.5 } };
        const asked: ListRequest = {
          date: DATE,
          wearer: 'adult',
          use: 'distance',
          prescription: { ...eyes, vertexDistance: 12, issued: '2026-06-01' },
          fit: { pd: { right: 31.5, left: 32 } },
        };
        const judge = frameJudge(shop, asked);
        const whole = judge(frame);
        const sent = judge(receiveFrame(JSON.parse(JSON.stringify(sendFrame(frame)))));
        expect([sent?.verdict, sent?.totalMinor]).toEqual([whole?.verdict, whole?.totalMinor]);
        const offMm = (sent?.thickestMm ?? 0) - (whole?.thickestMm ?? 0);
        expect(Math.abs(offMm)).toBeLessThan(0.05);
      }),
      { numRuns: 60 },
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { advisedPair, quoteWithAdvice } from '../../src/quote/advice.ts';
import type { Answer, PairAnswer } from '../../src/quote/answer.ts';
import type { PackageChange } from '../../src/quote/change.ts';
import { quote } from '../../src/quote/quote.ts';
import type { PairRequest, QuoteRequest } from '../../src/quote/request.ts';
import { withChanges } from '../../src/quote/withChanges.ts';
import { type Change, changed, offer } from '../fixtures/bench.ts';

const date = '2026-11-25';

function answer(pair: PairRequest): Answer {
  const reply = quote(offer, { date, pairs: [pair] });
  if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
  return reply.answer;
}

function advised(pair: PairRequest): PairAnswer {
  const request: QuoteRequest = { date, pairs: [pair] };
  return advisedPair(offer, request, answer(pair), 0);
}

const after = (pair: PairRequest, changes: readonly PackageChange[]) => {
  const whole = answer(withChanges(offer, pair, changes));
  const [one] = whole.pairs;
  if (one === undefined) throw new Error('There is a pair.');
  return { ...one, total: whole.price.total };
};

const anyChange: fc.Arbitrary<Change> = fc
  .record({
    frame: fc.constantFrom('ring', 'groove', 'drill', 'wrap'),
    size: fc.constantFrom('60-10', '65-5', '50-20', '38-24'),
    right: fc.integer({ min: -60, max: 44 }).map((n) => n / 4),
    left: fc.integer({ min: -60, max: 44 }).map((n) => n / 4),
    pd: fc.integer({ min: 25, max: 36 }),
    height: fc.integer({ min: 10, max: 36 }),
    use: fc.constantFrom('distance' as const, 'all' as const),
    design: fc.constantFrom('single', 'long', 'flat-top'),
    material: fc.constantFrom('bench-plastic', 'tough', 'thin'),
    tint: fc.constantFrom('clear', 'noon', 'glacier'),
    wearer: fc.constantFrom('adult' as const, 'child' as const),
  })
  .map(({ frame, size, right, left, pd, height, use, design, material, tint, wearer }) => ({
    frame,
    size,
    wearer,
    prescription: {
      right: { sphere: right, add: 2 },
      left: { sphere: left, add: 2 },
      vertexDistance: 12,
      issued: '2026-06-01',
    },
    fit: {
      pd: { right: pd, left: pd },
      fittingHeight: { right: height, left: height },
      segmentHeight: { right: height, left: height },
    },
    lenses: { use, design, material, tint },
  }));

describe('a remedy', () => {
  it('clears its finding and stops nothing that was not stopped before', () => {
    fc.assert(
      fc.property(anyChange, (change) => {
        const pair = changed(change);
        const before = advised(pair);
        const stopped = before.findings.filter(({ level }) => level === 'stop');
        for (const { rule, eye, remedy } of before.findings) {
          if (remedy === null) continue;
          const { findings } = after(pair, [remedy.change]);
          const left = findings.filter((one) => one.rule === rule && one.eye === eye && one.level !== 'note');
          expect(left).toEqual([]);
          const still = findings.some(({ level }) => level === 'stop');
          expect(remedy.message.includes('this point only')).toBe(still);
          const names = stopped.map((one) => `${one.rule} ${one.eye}`);
          for (const one of findings.filter(({ level }) => level === 'stop'))
            expect(names).toContain(`${one.rule} ${one.eye}`);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('is the smallest kind of change that serves: a size before a material before a frame', () => {
    const pair = changed({ size: '60-10', fit: { pd: { right: 27.5, left: 27.5 } } });
    const [first] = advised(pair).findings;
    expect(first).toMatchObject({ rule: 'blank-too-small', remedy: { change: { kind: 'size' } } });
  });

  it('of a caution keeps the way in which the frame holds its lenses', () => {
    const mountingOf = (id: unknown) => offer.frames.find((one) => one.id === id)?.mounting.kind;
    fc.assert(
      fc.property(anyChange, (change) => {
        const pair = changed(change);
        for (const { level, remedy } of advised(pair).findings)
          if (level === 'caution' && remedy?.change.kind === 'frame')
            expect(mountingOf(remedy.change.value)).toBe(mountingOf(pair.frame));
      }),
      { numRuns: 30 },
    );
  });

  it('is not invented where only a person can help', () => {
    const undated = changed({ prescription: { right: {}, left: {} } });
    for (const { rule, remedy } of advised(undated).findings) {
      if (rule === 'prescription-incomplete') expect(remedy).toBeNull();
    }
  });
});

describe('a way out', () => {
  it('ends in a package that can be made, at the price it names', () => {
    fc.assert(
      fc.property(anyChange, (change) => {
        const pair = changed(change);
        const { verdict, wayOut } = advised(pair);
        if (verdict !== 'refused') expect(wayOut).toBeNull();
        if (wayOut === null) return;
        const { verdict: then, total } = after(pair, wayOut.changes);
        expect(then).not.toBe('refused');
        expect(wayOut.differenceMinor).toBe(total - answer(pair).price.total);
      }),
      { numRuns: 60 },
    );
  });

  it('takes one change where one is enough', () => {
    const pair = changed({ wearer: 'child' });
    expect(advised(pair).wayOut?.changes).toEqual([{ kind: 'material', value: 'tough' }]);
  });
});

describe('an alternative', () => {
  it('can be made, is better by its aim, and costs what it says', () => {
    fc.assert(
      fc.property(anyChange, (change) => {
        const pair = changed(change);
        const before = answer(pair);
        for (const { aim, changes, from, to, differenceMinor } of advised(pair).alternatives) {
          const then = after(pair, changes);
          expect(then.verdict).not.toBe('refused');
          const least = { thinnest: 0.2, lightest: 1, widest: 1, 'least-reflecting': 0.5, cheapest: 100 };
          expect(Math.abs(from - to)).toBeGreaterThanOrEqual(least[aim as keyof typeof least] - 1e-6);
          expect(to > from).toBe(aim === 'widest');
          if (differenceMinor !== null) expect(differenceMinor).toBe(then.total - before.price.total);
          if (aim === 'thinnest')
            expect(to).toBe(
              Math.max(
                then.right?.edgeThicknessMm.thickest.mm ?? 0,
                then.left?.edgeThicknessMm.thickest.mm ?? 0,
              ),
            );
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe('an answer with advice', () => {
  it('is the plain answer with something added', () => {
    const request = { date, pairs: [changed({ wearer: 'child' }), changed({})] };
    const plain = quote(offer, request);
    const reply = quoteWithAdvice(offer, request);
    if (!plain.ok || !reply.ok) throw new Error('Both are answered.');
    expect(reply.answer.price).toEqual(plain.answer.price);
    expect(reply.answer.pairs.map(({ findings }) => findings.map(({ message }) => message))).toEqual(
      plain.answer.pairs.map(({ findings }) => findings.map(({ message }) => message)),
    );
  });
});

describe('advice in the demonstration shop', () => {
  const reading = loadCatalogue('content');
  if (!reading.ok) throw new Error('The demonstration shop has faults: run npm run check.');
  const shop = reading.catalogue;
  const ofShop = (pair: PairRequest) => {
    const reply = quoteWithAdvice(shop, { date, pairs: [pair] });
    if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
    const [one] = reply.answer.pairs;
    if (one === undefined) throw new Error('There is a pair.');
    return one;
  };
  const inFrame = (id: string, rest: Pick<PairRequest, 'prescription' | 'fit' | 'lenses' | 'wearer'>) => {
    const frame = shop.frames.find((one) => one.id === id);
    const [size] = frame?.sizes ?? [];
    const colourway = frame?.colourways.find(({ stock }) => stock !== 'sold-out');
    if (!size || !colourway) throw new Error(`The shop cannot sell "${id}".`);
    return { frame: id, size: size.id, colourway: colourway.code, ...rest };
  };
  const readers = (id: string, heightMm: number) => {
    const eye = { sphere: 1, add: 2 };
    return inFrame(id, {
      wearer: 'adult',
      prescription: { right: eye, left: eye, issued: '2026-06-01' },
      fit: { pd: { right: 31, left: 31 }, fittingHeight: { right: heightMm, left: heightMm } },
      lenses: {
        ...{ use: 'all', design: 'progressive-middle', material: 'standard-plastic' },
        ...{ tint: null, coating: null },
      },
    });
  };

  it('of a low frame takes the pupil as far above the middle in other frames, and asks to measure again', () => {
    // Half of B, 14.5 mm, and the pupil 1.5 mm below it; 41 mm high, another frame has it at 19 mm.
    const low = readers('redshank', 13);
    const high = withChanges(shop, low, [
      { kind: 'frame', value: 'phalarope', size: '50-20', colourway: readers('phalarope', 19).colourway },
    ]);
    expect(high).toEqual(readers('phalarope', 19));
    expect(ofShop(high).verdict).toBe('care');
    const { wayOut, findings } = ofShop(low);
    expect(wayOut?.changes.map(({ kind }) => kind)).toEqual(['frame']);
    expect(wayOut?.message).toContain('measure them again');
    for (const { rule, remedy } of findings)
      if (rule === 'edge-beyond-rim')
        expect(remedy?.message).toMatch(/ 0 mm of edge show .* measure them again/);
  });

  it('sends a child to a frame made for children first, whatever the present one is', () => {
    const eye = { sphere: -2.25 };
    const { wayOut, findings } = ofShop(
      inFrame('stint', {
        wearer: 'child',
        prescription: { right: eye, left: eye, issued: '2026-06-01' },
        fit: { pd: { right: 27, left: 27 } },
        lenses: {
          ...{ use: 'distance', design: 'single-vision', material: 'polycarbonate' },
          ...{ tint: null, coating: null },
        },
      }),
    );
    const changes = [...(wayOut?.changes ?? []), ...findings.flatMap(({ remedy }) => remedy?.change ?? [])];
    const frames = changes.filter(({ kind }) => kind === 'frame');
    expect(frames.length).toBeGreaterThan(1);
    for (const { value } of frames) expect(shop.frames.find(({ id }) => id === value)?.wearer).toBe('child');
  });
});

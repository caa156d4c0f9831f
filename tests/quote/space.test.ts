import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quote } from '../../src/quote/quote.ts';
import { packagesOf } from '../../src/quote/space.ts';
import { RULES } from '../../src/rules/rules.ts';
import { changed, offer } from '../fixtures/bench.ts';

const eighths = (from: number, to: number) => fc.integer({ min: from * 8, max: to * 8 }).map((n) => n / 8);
const asked = fc
  .record({
    right: eighths(-12, 10),
    left: eighths(-12, 10),
    add: fc.constantFrom(null, 1.5, 2.25),
    use: fc.constantFrom('distance' as const, 'all' as const, 'near' as const, 'none' as const),
    frame: fc.constantFrom('ring', 'groove', 'drill', 'wrap'),
    wearer: fc.constantFrom('adult' as const, 'child' as const),
  })
  .map(({ right, left, add, use, frame, wearer }) => ({
    date: '2026-11-25',
    pairs: [
      changed({
        frame,
        wearer,
        prescription: {
          right: { sphere: right, add },
          left: { sphere: left, add },
          vertexDistance: 12,
          issued: '2026-06-01',
        },
        fit: { fittingHeight: { right: 24, left: 24 }, segmentHeight: { right: 20, left: 20 } },
        lenses: { use },
      }),
    ],
  }));

describe('every package of a frame', () => {
  it('is there once', () => {
    const packages = packagesOf(offer, { date: '2026-11-25', pairs: [changed({})] }, 0);
    const { designs, materials, tints, coatings } = offer;
    expect(packages).toHaveLength(designs.length * materials.length * tints.length * coatings.length);
    const names = packages.map(({ design, material, tint, coating }) =>
      [design, material, tint, coating].join(),
    );
    expect(new Set(names).size).toBe(names.length);
  });

  it('has the verdict and the total that the one door gives', () => {
    fc.assert(
      fc.property(asked, fc.nat(), (request, pick) => {
        const packages = packagesOf(offer, request, 0);
        const one = packages[pick % packages.length];
        if (one === undefined) throw new Error('There are packages.');
        const { design, material, tint, coating, verdict, totalMinor } = one;
        const [pair] = request.pairs;
        if (pair === undefined) throw new Error('There is a pair.');
        const lenses = { ...pair.lenses, design, material, tint, coating };
        const reply = quote(offer, { ...request, pairs: [{ ...pair, lenses }] });
        if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
        expect([verdict, totalMinor]).toEqual([reply.answer.verdict, reply.answer.price.total]);
      }),
      { numRuns: 150 },
    );
  });
});

describe('a rule that asks for the lens alone', () => {
  it('never looks at tint or coating', () => {
    const rules = RULES.filter(({ asks }) => asks === 'lens');
    fc.assert(
      fc.property(asked, (request) => {
        const [first] = packagesOf(offer, request, 0);
        if (first === undefined) throw new Error('There are packages.');
        const blind = Object.defineProperties(
          { ...first.situation },
          {
            tint: { get: () => expect.unreachable('tint was looked at') },
            coating: { get: () => expect.unreachable('coating was looked at') },
          },
        );
        for (const rule of rules) rule.check(blind);
      }),
      { numRuns: 40 },
    );
  });
});

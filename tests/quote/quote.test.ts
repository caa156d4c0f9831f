import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerSchema } from '../../src/quote/answerSchema.ts';
import { quote } from '../../src/quote/quote.ts';
import type { PairRequest, QuoteRequest } from '../../src/quote/request.ts';
import { changed, offer } from '../fixtures/bench.ts';

const ask = (pairs: readonly PairRequest[], rest: Partial<QuoteRequest> = {}) =>
  quote(offer, { date: '2026-11-25', ...rest, pairs });

const eighths = (from: number, to: number) => fc.integer({ min: from * 8, max: to * 8 }).map((n) => n / 8);

const eye = fc
  .record({
    sphere: eighths(-16, 14),
    cylinder: eighths(-6, 6),
    axis: fc.integer({ min: 1, max: 180 }),
    add: fc.option(eighths(0.75, 3.5)),
    prism: fc.array(
      fc.record({
        amount: eighths(0, 6),
        base: fc.constantFrom('in' as const, 'out' as const, 'up' as const, 'down' as const),
      }),
      { maxLength: 2 },
    ),
  })
  .map(({ cylinder, axis, ...rest }) => (cylinder === 0 ? rest : { cylinder, axis, ...rest }));

const anyPair: fc.Arbitrary<PairRequest> = fc
  .record({
    frame: fc.constantFrom('ring', 'groove', 'drill', 'wrap'),
    size: fc.constantFrom('60-10', '65-5', '50-20', '38-24'),
    wearer: fc.constantFrom('adult' as const, 'child' as const, 'one-eyed' as const),
    right: eye,
    left: eye,
    pd: fc.integer({ min: 24, max: 40 }),
    height: fc.integer({ min: 8, max: 40 }),
    use: fc.constantFrom('distance' as const, 'near' as const, 'all' as const, 'none' as const),
    design: fc.constantFrom('single', 'long', 'flat-top', 'none'),
    material: fc.constantFrom('bench-plastic', 'tough', 'thin'),
    tint: fc.constantFrom(null, 'clear', 'noon', 'glacier'),
  })
  .map(({ frame, size, wearer, right, left, pd, height, use, design, material, tint }) =>
    changed({
      frame,
      size,
      wearer,
      prescription: { right, left, issued: '2026-06-01' },
      fit: {
        pd: { right: pd, left: pd },
        fittingHeight: { right: height, left: height },
        segmentHeight: { right: height, left: height },
      },
      lenses: { use, design, material, tint },
    }),
  );

describe('an answer', () => {
  it('has the shape of its schema, without a number that is none, whatever is asked', () => {
    fc.assert(
      fc.property(anyPair, (pair) => {
        const reply = ask([pair]);
        if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
        answerSchema.parse(JSON.parse(JSON.stringify(reply.answer)));
      }),
      { numRuns: 300 },
    );
  });

  it('totals its lines', () => {
    fc.assert(
      fc.property(fc.array(anyPair, { minLength: 1, maxLength: 3 }), (pairs) => {
        const reply = ask(pairs);
        if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
        const { lines, total } = reply.answer.price;
        expect(lines.reduce((sum, { amount }) => sum + amount, 0)).toBe(total);
      }),
      { numRuns: 60 },
    );
  });

  it('is refused with a stop, done with care with a caution, makeable with neither', () => {
    fc.assert(
      fc.property(anyPair, (pair) => {
        const reply = ask([pair]);
        if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
        const levels = reply.answer.pairs[0]?.findings.map(({ level }) => level) ?? [];
        const expected = levels.includes('stop')
          ? 'refused'
          : levels.includes('caution')
            ? 'care'
            : 'makeable';
        expect(reply.answer.verdict).toBe(expected);
      }),
      { numRuns: 100 },
    );
  });

  it('is the mirror image when the eyes change places', () => {
    const mirrored = (degrees: number) => (((180 - degrees) % 360) + 360) % 360;
    const flip = ({ axis, ...rest }: { axis?: number | undefined }) =>
      axis === undefined ? rest : { ...rest, axis: 180 - axis || 180 };
    fc.assert(
      fc.property(anyPair, (pair) => {
        const { right, left } = pair.prescription ?? { right: {}, left: {} };
        const swapped = {
          ...pair,
          prescription: { ...pair.prescription, right: flip(left as object), left: flip(right as object) },
        };
        const [one, other] = [ask([pair]), ask([swapped])].map((reply) =>
          reply.ok ? reply.answer.pairs[0] : undefined,
        );
        expect(other?.verdict).toBe(one?.verdict);
        const a = one?.right;
        const b = other?.left;
        expect(b?.massG).toBe(a?.massG);
        expect(b?.centreThicknessMm).toBe(a?.centreThicknessMm);
        expect(b?.decentrationMm).toEqual(a?.decentrationMm);
        if (a && b && a.edgeThicknessMm.thickest.mm - a.edgeThicknessMm.thinnest.mm > 0.5)
          expect(b.edgeThicknessMm.thickest.mm).toBe(a.edgeThicknessMm.thickest.mm);
        expect(mirrored(mirrored(10))).toBe(10);
      }),
      { numRuns: 100 },
    );
  });

  it('does not depend on what was asked before', () => {
    fc.assert(
      fc.property(anyPair, anyPair, (pair, other) => {
        const first = ask([pair]);
        ask([other]);
        expect(ask([pair])).toEqual(first);
      }),
      { numRuns: 60 },
    );
  });
});

describe('a request that cannot be read', () => {
  it('has every fault at once, with the names that the shop has', () => {
    const reply = ask([
      changed({ frame: 'ring', size: '50', colourway: 'pink', lenses: { design: 'x', tint: 'y' } }),
      changed({ frame: 'gull' }),
    ]);
    if (reply.ok) throw new Error('The request was read.');
    expect(
      reply.faults
        .map(({ path, message, expected, found }) => `${path}: ${message} ${expected} / ${found}`)
        .join('\n'),
    ).toMatchInlineSnapshot(`
      "pairs.0.lenses.design: There is no design of this name in the shop. single, long, flat-top, none / x
      pairs.0.lenses.tint: There is no tint of this name in the shop. clear, dusk, noon, glacier / y
      pairs.0.size: There is no size of this frame of this name in the shop. 60-10, 65-5, 50-20, 38-24 / 50
      pairs.0.colourway: There is no colourway of this frame of this name in the shop. ink, kelp / pink
      pairs.1.frame: There is no frame of this name in the shop. ring, groove, drill, wrap / gull"
    `);
  });

  it('has no price for an exemption that is not known', () => {
    const reply = ask([changed({})], { taxExemption: 'because' });
    expect(reply.ok ? [] : reply.faults.map(({ path }) => path)).toEqual(['taxExemption']);
  });
});

describe('the shopper’s own frame', () => {
  it('is judged by its measurements and priced for lenses alone', () => {
    const reply = ask([
      changed({ frame: { a: 50, b: 50, dbl: 20, ed: 50, family: 'round', mounting: 'full' } }),
    ]);
    if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
    expect(reply.answer.price.lines.map(({ kind }) => kind)).not.toContain('frame');
    expect(reply.answer.pairs[0]?.right?.blank.neededMm).toBe(52);
  });

  it('has exact faults where no such frame can be', () => {
    const frames = [
      { a: 50, b: 40, dbl: 20, ed: 90, family: 'panto', mounting: 'full' as const },
      { a: 50, b: 40, dbl: 20, family: 'heart', mounting: 'full' as const },
      { a: 50, b: 40, dbl: 20, radii: Array.from({ length: 36 }, () => 25), mounting: 'full' as const },
    ];
    const faults = frames.flatMap((frame) => {
      const reply = ask([changed({ frame })]);
      return reply.ok ? [] : reply.faults;
    });
    expect(
      faults
        .map(({ path, message, expected, found }) => `${path}: ${message} ${expected} / ${found}`)
        .join('\n'),
    ).toMatchInlineSnapshot(`
      "pairs.0.frame.ed: No outline of this family has these measurements. ED from 50.88 to 60.77 mm / 90 mm
      pairs.0.frame.family: There is no outline family of this name. round, oval, panto, rectangle, square, upswept, teardrop, hexagon / heart
      pairs.0.frame.radii: The radii do not have the box that is stated. A 50 mm, B 40 mm (within 0.2 mm) / A 50.00 mm, B 50.00 mm"
    `);
  });
});

import { describe, expect, it } from 'vitest';
import { judgePair } from '../../src/quote/judgePair.ts';
import { LENS_CHOICES, optionReports, REPORTED_CHOICES } from '../../src/quote/options.ts';
import { quote } from '../../src/quote/quote.ts';
import { reflectedPercent } from '../../src/rules/lensLight.ts';
import { sharpAngles } from '../../src/rules/sharpAngle.ts';
import { changed, offer } from '../fixtures/bench.ts';

const request = { date: '2026-11-25', pairs: [changed({ wearer: 'child' })] };
const total = (pairs: typeof request.pairs) => {
  const reply = quote(offer, { ...request, pairs });
  return reply.ok ? reply.answer.price.total : Number.NaN;
};

describe('a report on options', () => {
  it('covers every option of the kind, in the order of the shop, with the present one marked', () => {
    for (const kind of LENS_CHOICES) {
      const reports = optionReports(offer, request, 0, kind);
      expect(reports.map(({ id }) => id)).toEqual(offer[`${kind}s`].map(({ id }) => id));
      expect(reports.filter(({ chosen }) => chosen).map(({ id }) => id)).toEqual([
        request.pairs[0]?.lenses[kind],
      ]);
    }
  });

  it('differs in price by just what the whole quote differs', () => {
    for (const kind of LENS_CHOICES)
      for (const { id, differenceMinor } of optionReports(offer, request, 0, kind)) {
        const other = changed({ wearer: 'child', lenses: { [kind]: id } });
        expect(differenceMinor).toBe(total([other]) - total(request.pairs));
      }
  });

  it('names what an option is to blame for, and leaves out what all of its kind meet', () => {
    const materials = optionReports(offer, request, 0, 'material');
    expect(materials.map(({ id, verdict }) => [id, verdict])).toEqual([
      ['bench-plastic', 'refused'],
      ['tough', 'makeable'],
      ['thin', 'refused'],
    ]);
    // The material is wrong for a child with each of the tints: no tint is to blame.
    const tints = optionReports(offer, request, 0, 'tint');
    expect(tints.flatMap(({ findings }) => findings.map(({ rule }) => rule))).not.toContain(
      'impact-resistance',
    );
  });

  it('gives each option the figures of the whole package with it', () => {
    for (const kind of REPORTED_CHOICES)
      for (const { id, tradeOff, thickestMm, massG } of optionReports(offer, request, 0, kind)) {
        const judged = judgePair(
          offer,
          request.date,
          changed({ wearer: 'child', lenses: { [kind]: id } }),
          '',
          [],
        );
        const { situation, answer } = judged ?? {};
        const [right, left] = [answer?.right, answer?.left];
        expect(tradeOff).toMatchObject({
          beyondRimMm: right && left ? Math.max(right.beyondRimMm, left.beyondRimMm) : null,
          centreMm: right && left ? Math.max(right.centreThicknessMm, left.centreThicknessMm) : null,
          sharpDeg: (situation && sharpAngles(situation)?.leastDeg) ?? null,
          reflectedPercent: situation?.tint?.mirrored ? null : situation && reflectedPercent(situation),
          thickestMm,
          massG,
        });
        expect(tradeOff?.lightPercents).toHaveLength(situation?.tint?.states.length || 1);
      }
  });

  it('lets less light through where more is thrown back, and more colour fringes where the Abbe number is lower', () => {
    const materials = optionReports(offer, request, 0, 'material').map(({ id, tradeOff }) => ({
      ...tradeOff,
      abbe: offer.materials.find((one) => one.id === id)?.abbe ?? 0,
    }));
    const coatings = optionReports(offer, request, 0, 'coating').map(({ tradeOff }) => ({ ...tradeOff }));
    const orderedBy = <T>(all: readonly T[], of: (one: T) => number) =>
      all.toSorted((one, other) => of(one) - of(other));
    const falling = (values: readonly number[]) =>
      values.every((one, i) => i === 0 || one <= (values[i - 1] ?? 0));
    expect(falling(orderedBy(materials, ({ abbe }) => abbe).map((one) => one.fringesPrism ?? 0))).toBe(true);
    expect(
      falling(
        orderedBy(coatings, (one) => one.reflectedPercent ?? 0).map((one) => one.lightPercents?.[0] ?? 0),
      ),
    ).toBe(true);
  });

  it('sets ready-made lenses beside those made to order, each as asked for by itself', () => {
    const reports = optionReports(offer, request, 0, 'blank');
    expect(reports.map(({ id, chosen }) => [id, chosen])).toEqual([
      ['auto', true],
      ['stock', false],
      ['surfaced', false],
    ]);
    for (const { id, thickestMm } of reports) {
      const [pair] = (() => {
        const lenses = { blank: id as 'auto' };
        const reply = quote(offer, { ...request, pairs: [changed({ wearer: 'child', lenses })] });
        return reply.ok ? reply.answer.pairs : [];
      })();
      const edge =
        pair?.right && pair.left && [pair.right, pair.left].map((one) => one.edgeThicknessMm.thickest.mm);
      expect(thickestMm).toBe(edge ? Math.max(...edge) : null);
    }
  });

  it('names the chosen things that an option does not go with', () => {
    for (const kind of LENS_CHOICES)
      for (const { excludes, findings } of optionReports(offer, request, 0, kind)) {
        const declared = findings.some(({ rule }) => rule === 'not-offered' || rule === 'mounting-material');
        if (declared) expect(excludes).toMatch(/^Not together with: ./);
      }
  });

  it('names the cheapest choice beside a refused option with which it goes', () => {
    const [quiet] = offer.coatings;
    if (quiet === undefined) throw new Error('The bench shop has no coating.');
    const coat = (id: string, priceMinor: number) => ({ ...quiet, id, name: id, priceMinor });
    const limit = { kind: 'only-with', level: 'stop', because: 'It reflects.' } as const;
    const materials = offer.materials.map((one) =>
      one.id === 'thin' ? { ...one, limits: [{ ...limit, ids: { coating: ['dear', 'cheap'] } }] } : one,
    );
    const shop = { ...offer, materials, coatings: [quiet, coat('dear', 9000), coat('cheap', 8000)] };
    const remediesIn = (pair: ReturnType<typeof changed>) =>
      optionReports(shop, { ...request, pairs: [pair] }, 0, 'material').map(({ id, findings }) => [
        id,
        findings.flatMap(({ remedy }) => remedy?.message ?? []),
      ]);
    expect(remediesIn(changed({}))).toEqual([
      ['bench-plastic', []],
      ['tough', []],
      ['thin', ['With cheap it would do.']],
    ]);
    // Nothing beside the material makes it safe for a child.
    expect(remediesIn(changed({ wearer: 'child' })).at(-1)).toEqual(['thin', []]);
  });
});

import { describe, expect, it } from 'vitest';
import { LENS_CHOICES, optionReports } from '../../src/quote/options.ts';
import { quote } from '../../src/quote/quote.ts';
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
});

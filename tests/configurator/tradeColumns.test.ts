import { describe, expect, it } from 'vitest';
import { type OptionRow, optionRows } from '../../src/configurator/optionRows.ts';
import { shopData } from '../../src/configurator/shopData.ts';
import { TRADE_COLUMNS, tradeOf } from '../../src/configurator/tradeColumns.ts';
import { optionReports, REPORTED_CHOICES } from '../../src/quote/options.ts';
import { DATE, shop } from './shop.ts';

const request = {
  date: DATE,
  pairs: [
    {
      frame: 'sanderling',
      size: '51-19',
      colourway: 'kelp',
      prescription: { right: { sphere: -4.5 }, left: { sphere: -4 }, vertexDistance: 12 },
      fit: { pd: { right: 31, left: 31 } },
      lenses: {
        use: 'distance' as const,
        design: 'single-vision',
        material: 'standard-plastic',
        tint: 'clear',
        coating: 'anti-reflective',
      },
    },
  ],
};
const data = shopData(shop);
const rowsOf = (kind: (typeof REPORTED_CHOICES)[number]) =>
  optionRows(data, kind, optionReports(shop, request, 0, kind));

describe('options side by side', () => {
  it('tell every known figure once: in a column where options differ, else beside them', () => {
    for (const kind of REPORTED_CHOICES) {
      const rows = rowsOf(kind);
      const { columns, alike } = tradeOf(rows);
      const told = [...columns, ...alike].map(({ key }) => key);
      expect(new Set(told).size).toBe(told.length);
      expect(TRADE_COLUMNS).toEqual(expect.arrayContaining(told));
      expect(columns[0]?.key).toBe('price');
      for (const { cells } of columns) expect(cells).toHaveLength(rows.length);
    }
  });

  it('have their best and worst among those that can be made', () => {
    for (const kind of REPORTED_CHOICES) {
      const rows = rowsOf(kind);
      for (const { key, cells } of tradeOf(rows).columns) {
        const able = cells.filter((_, at) => rows[at]?.mark !== 'refused');
        const of = (rank: string) =>
          able.filter((cell) => cell.rank === rank).map(({ values }) => values[0] ?? 0);
        for (const best of of('best'))
          for (const { values } of able)
            for (const value of values)
              expect(key === 'sharp' ? best >= value : best <= value, key).toBe(true);
        for (const worst of of('worst')) expect(of('best')).not.toContain(worst);
        for (const [at, { rank }] of cells.entries())
          if (rows[at]?.mark === 'refused') expect(rank).toBeNull();
      }
    }
  });

  it('have no best where most of them share it', () => {
    const one = { mark: 'fits', tradeOff: null } as unknown as OptionRow;
    const prices = (all: readonly number[]) =>
      tradeOf(all.map((differenceMinor) => ({ ...one, differenceMinor }))).columns[0]?.cells.map(
        ({ rank }) => rank,
      );
    expect(prices([0, 5, 5, 5])).toEqual(['best', null, null, null]);
    expect(prices([0, 0, 5, 9])).toEqual(['best', 'best', null, 'worst']);
    expect(prices([3, 3, 3])).toEqual([null, null, null]);
  });
});

/** Percent that a claim calls an edge thinner by, below 0 where thicker; 0 where it says nothing of the edge. */
function thinnerPercent(claim: string | null | undefined): number {
  const [, percent = 0, way] = /(\d+) % (thinner|thicker) at the edge/.exec(claim ?? '') ?? [];
  return way === 'thicker' ? -percent : Number(percent);
}

describe('the claim of an option', () => {
  it('is the difference of the thickest edges in whole percent of the present one', () => {
    const reports = optionReports(shop, request, 0, 'material');
    const present = reports.find(({ chosen }) => chosen)?.thickestMm ?? 0;
    for (const row of rowsOf('material')) {
      const edge = row.tradeOff?.thickestMm;
      if (!edge) continue;
      expect(thinnerPercent(row.claim)).toBeCloseTo(Math.round((100 * (present - edge)) / present), 9);
    }
    expect(rowsOf('material').some(({ claim }) => thinnerPercent(claim) > 10)).toBe(true);
  });

  it('is not made of the present option, nor before there are lenses', () => {
    for (const { id, claim } of rowsOf('material')) if (id === 'standard-plastic') expect(claim).toBeNull();
    const [pair] = request.pairs;
    const empty = {
      ...request,
      pairs: [{ ...pair, prescription: { right: {}, left: {} } }],
    } as typeof request;
    for (const { claim } of optionRows(data, 'material', optionReports(shop, empty, 0, 'material')))
      expect(claim).toBeNull();
  });

  it('says which curve and centre make a denser material thicker, and nothing where it is thinner', () => {
    const [pair] = request.pairs;
    const asked = {
      ...request,
      pairs: [
        {
          ...pair,
          prescription: { right: { sphere: 3 }, left: { sphere: 3 }, vertexDistance: 12 },
          lenses: { ...pair?.lenses, material: 'urethane-1-53' },
        },
      ],
    } as typeof request;
    const reports = optionReports(shop, asked, 0, 'material');
    const rows = optionRows(data, 'material', reports);
    const claimOf = (id: string) => rows.find((row) => row.id === id)?.claim;
    for (const { id, ne } of shop.materials) {
      const denserYetThicker = ne > 1.54 && thinnerPercent(claimOf(id)) < 0;
      expect(/, though its index is/.test(claimOf(id) ?? ''), id).toBe(denserYetThicker);
    }
    expect(claimOf('thiourethane-1-60')).toMatch(
      / Thicker, though its index is higher: front curve 6\.50 D instead of 6\.00 D.*; center 4\.70 mm instead/,
    );
  });
});

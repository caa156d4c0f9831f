import { beforeAll, describe, expect, it } from 'vitest';
import type { Catalogue } from '../../../src/catalogue/catalogue.ts';
import { loadCatalogue } from '../../../src/catalogue/load.ts';
import type { Costs } from '../../../src/catalogue/schema/costs.ts';
import { underCost } from '../../../src/commands/prices/underCost.ts';
import { quote } from '../../../src/quote/quote.ts';

let shop: Catalogue;
beforeAll(() => {
  const reading = loadCatalogue('content');
  if (!reading.ok) throw new Error('The demo shop has faults.');
  const keep = ['sanderling', 'dunlin', 'stint'];
  shop = { ...reading.catalogue, frames: reading.catalogue.frames.filter(({ id }) => keep.includes(id)) };
});

const NOTHING: Costs = {
  ...{ frames: {}, designs: {}, materials: {}, tints: {}, coatings: {} },
  ...{ work: 0, parcel: null },
};
const frame = (cost: number) => ({ cost, colourways: {}, sizes: {} });
const DAY = '2026-11-25';

describe('pairs under cost', () => {
  it('are none where nothing costs anything, and all that lacks a cost is named', () => {
    const { losses, unknown } = underCost(shop, NOTHING, DAY);
    expect(losses).toEqual([]);
    expect(unknown).toContain('frames/dunlin');
    expect(unknown).toContain('lenses/coatings/hard');
  });

  it('keep of an order what the quote keeps of it before tax and parcel', () => {
    const { losses } = underCost(shop, { ...NOTHING, work: 100_000 }, DAY);
    expect(losses.map(({ frame }) => frame).toSorted()).toEqual(shop.frames.map(({ id }) => id).toSorted());
    for (const {
      frame,
      size,
      colourway,
      design,
      material,
      tint,
      coating,
      stock,
      from,
      codes,
      pairs,
      takeMinor,
    } of losses) {
      const { uses = [] } = shop.designs.find(({ id }) => id === design) ?? {};
      const lenses = { use: uses[0] ?? 'distance', design, material, tint, coating };
      const pair = {
        ...{ frame, size, colourway },
        prescription: { right: { sphere: -1 }, left: { sphere: -1 } },
        fit: { pd: 64 },
        lenses: { ...lenses, blank: stock === null ? ('surfaced' as const) : ('stock' as const) },
      };
      const reply = quote(shop, { date: from, codes, pairs: Array.from({ length: pairs }, () => pair) });
      if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
      const kept = reply.answer.price.lines
        .filter(({ pair }) => pair !== null)
        .reduce((sum, { amount }) => sum + amount, 0);
      expect(kept).toBe(takeMinor);
    }
  });

  it('are found on the day on which a promotion makes them so, not before', () => {
    // Harbor month takes 15 % off 149.00 until 5 December 2026: 126.65 is left.
    const bare: Catalogue = {
      ...shop,
      promotions: shop.promotions.filter(({ id }) => id === 'harbour-november'),
      designs: [], // No lenses: no pair, so nothing sells at all.
    };
    expect(underCost(bare, NOTHING, DAY).losses).toEqual([]);
    const cheapest = underCost(
      { ...bare, designs: shop.designs },
      { ...NOTHING, work: 30_000 },
      '2026-10-01',
    ).losses;
    expect(cheapest.find((loss) => loss.frame === 'sanderling')?.from).toBe('2026-11-01');
    expect(cheapest.find((loss) => loss.frame === 'dunlin')?.from).toBe('2026-10-01');
  });

  it('count a parcel that is given away where the owner has said what it costs', () => {
    const costs = (parcel: number | null): Costs => ({
      ...NOTHING,
      frames: { dunlin: frame(100_000) },
      parcel,
    });
    const worst = (parcel: number | null) => underCost(shop, costs(parcel), DAY).losses[0];
    expect((worst(700)?.costMinor ?? 0) - (worst(null)?.costMinor ?? 0)).toBe(700);
  });
});

import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { framePrice } from '../../src/pricing/framePrice.ts';
import { priceOrder } from '../../src/pricing/priceOrder.ts';

const reading = loadCatalogue('content');
if (!reading.ok) throw new Error('The demo has faults.');
const { catalogue } = reading;

describe('the price of a frame by itself', () => {
  it.each(['2026-10-31', '2026-11-01', '2026-12-05', '2026-12-06'])(
    'is what an order of it comes to on %s, shipping and tax apart',
    (date) => {
      for (const frame of catalogue.frames)
        for (const size of frame.sizes)
          for (const colourway of frame.colourways) {
            const priced = { frame, size, colourway };
            const asked = { date, destination: 'CA', taxExemption: null, codes: [] };
            const reply = priceOrder(catalogue, [{ frame: priced, lenses: null }], asked);
            if (!reply.ok) throw new Error('No price.');
            const goods = reply.order.lines
              .filter(({ kind, pair }) => kind === 'frame' || (kind === 'promotion' && pair !== null))
              .reduce((sum, { amount }) => sum + amount, 0);
            expect(framePrice(catalogue, priced, date).dueMinor).toBe(goods);
          }
    },
  );

  it('names the first end of the promotions that lower it', () => {
    const frame = catalogue.frames.find(({ id }) => id === 'sanderling');
    const [size] = frame?.sizes ?? [];
    const [colourway] = frame?.colourways ?? [];
    if (!frame || !size || !colourway) throw new Error('The demo has no such frame.');
    expect(framePrice(catalogue, { frame, size, colourway }, '2026-11-25').until).toBe('2026-12-05');
    expect(framePrice(catalogue, { frame, size, colourway }, '2026-10-25').until).toBeNull();
  });
});

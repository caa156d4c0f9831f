import { describe, expect, it } from 'vitest';
import type { Frame } from '../../src/catalogue/frame.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { frameReach } from '../../src/quote/frameReach.ts';

const DATE = '2026-11-25';
const reading = loadCatalogue('content');
if (!reading.ok) throw new Error('The demonstration shop has faults: run npm run check.');
const shop = reading.catalogue;
const frameOf = (id: string) => shop.frames.find((frame) => frame.id === id) as Frame;

describe('what a frame makes', () => {
  const grid = { spheresD: [-20, -8, -1, 1, 8, 20], cylindersD: [0, -2] };

  it('is told for every power of the grid', () => {
    const rows = frameReach(shop, DATE, grid, frameOf('dunlin'));
    expect(rows.map((row) => row.length)).toEqual([6, 6]);
  });

  it('ends where every material of the shop ends', () => {
    for (const frame of shop.frames) {
      const [plain] = frameReach(shop, DATE, grid, frame);
      expect([plain?.[0], plain?.[5]]).toEqual(['refused', 'refused']);
      expect(plain?.[2]).not.toBe('refused');
    }
  });

  it('is nothing where the shop has no lens for the use', () => {
    const designs = shop.designs.filter(({ uses }) => !uses.includes('distance'));
    const rows = frameReach({ ...shop, designs, promotions: [] }, DATE, grid, frameOf('knot'));
    expect(new Set(rows.flat())).toEqual(new Set([null]));
  });
});

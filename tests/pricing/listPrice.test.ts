import { describe, expect, test } from 'vitest';
import type { Charge } from '../../src/pricing/charge.ts';
import { listCharges } from '../../src/pricing/listPrice.ts';
import { lenses, otherPair, pair, stock } from './offer.ts';

const told = (charges: readonly Charge[]) =>
  charges.map(({ kind, amountMinor, source }) => [kind, amountMinor, source]);

describe('the list price of a pair', () => {
  test('has a line for a colour and a size only where they differ in price', () => {
    expect(told(listCharges(pair, 0).frame)).toEqual([['frame', 14900, 'frames/dunlin']]);
    expect(told(listCharges(otherPair, 0).frame)).toEqual([
      ['frame', 14900, 'frames/dunlin'],
      ['frame', 1200, 'frames/dunlin'],
      ['frame', -1000, 'frames/dunlin'],
    ]);
  });

  test('shows what is included, at nothing', () => {
    expect(told(listCharges(pair, 0).lenses)).toEqual([
      ['lenses', 6000, 'lenses/designs/single'],
      ['lenses', 0, 'lenses/materials/standard'],
      ['option', 0, 'lenses/tints/clear'],
      ['option', 3500, 'lenses/coatings/quiet'],
    ]);
  });

  test('has no line for a tint or coating that is deliberately none', () => {
    const plain = { ...lenses, tint: null, coating: null };
    expect(told(listCharges({ ...pair, lenses: plain }, 0).lenses).map(([kind]) => kind)).toEqual([
      'lenses',
      'lenses',
    ]);
  });

  test('has surcharges of the design, then of the material', () => {
    const strong = { ...lenses, strongestMeridianD: -6.25, prism: 4 };
    expect(told(listCharges({ ...pair, lenses: strong }, 0).lenses).slice(4)).toEqual([
      ['surcharge', 1500, 'lenses/designs/single'],
      ['surcharge', 2500, 'lenses/materials/standard'],
    ]);
  });

  test('of ready-made lenses replaces design and material, their surcharges too', () => {
    const ready = { ...lenses, stock, strongestMeridianD: -6.25, prism: 4 };
    expect(told(listCharges({ ...pair, lenses: ready }, 0).lenses)).toEqual([
      ['lenses', 4500, 'lenses/materials/standard'],
      ['option', 0, 'lenses/tints/clear'],
      ['option', 3500, 'lenses/coatings/quiet'],
    ]);
  });

  test("of the shopper's own frame is for lenses alone, and of a frame alone has no lenses", () => {
    expect(listCharges({ ...pair, frame: null }, 0).frame).toEqual([]);
    expect(listCharges({ ...pair, lenses: null }, 0).lenses).toEqual([]);
  });

  test('carries the place of its pair', () => {
    const { frame, lenses: lensLines } = listCharges(pair, 3);
    expect([...frame, ...lensLines].every(({ pair: place }) => place === 3)).toBe(true);
  });
});

import { describe, expect, it } from 'vitest';
import { heightMarks } from '../../../src/configurator/entry/heightMarks.ts';
import { judgePair } from '../../../src/quote/judgePair.ts';
import { changed, offer } from '../../fixtures/bench.ts';

describe('heights drawn on a frame', () => {
  it('lie, where nothing was measured, where the lens is centred without a measured height', () => {
    for (const datumAboveCentreMm of [0, 2, 3.5]) {
      const habits = { ...offer.shop.habits, datumAboveCentreMm };
      const shop = { ...offer, shop: { ...offer.shop, habits } };
      const situation = judgePair(shop, '2026-11-25', changed({}), '', [])?.situation;
      const marks = heightMarks({ bMm: 50 }, {}, false, habits);
      for (const { eye, heightMm, given } of marks) {
        expect(given).toBe(false);
        expect(heightMm - 25).toBeCloseTo(situation?.[eye].reference?.yMm ?? Number.NaN, 9);
      }
    }
  });

  it('are those that were measured', () => {
    const marks = heightMarks(
      { bMm: 50 },
      { fittingHeight: { right: 29, left: 28.5 } },
      false,
      offer.shop.habits,
    );
    expect(marks.map(({ heightMm, given }) => [heightMm, given])).toEqual([
      [29, true],
      [28.5, true],
    ]);
  });
});

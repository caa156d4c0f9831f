import { describe, expect, it } from 'vitest';
import type { Colourway, Frame } from '../../src/catalogue/frame.ts';
import type { Promotion } from '../../src/catalogue/promotion.ts';
import { priceSpan, shownFirst } from '../../src/components/frameFacts.ts';
import { comingAfter, runningOn } from '../../src/components/running.ts';
import { sampleFrame } from './drawing/sampleFrame.ts';

const { frame: plain, size } = sampleFrame();
const [one] = plain.colourways as [Colourway];
const frame: Frame = {
  ...plain,
  colourways: [
    { ...one, code: 'gone', stock: 'sold-out', priceDifferenceMinor: -5_000 },
    { ...one, code: 'dear', priceDifferenceMinor: 1_000 },
    { ...one, code: 'plain' },
  ],
  sizes: [size, { ...size, id: 'large', priceDifferenceMinor: 2_000 }],
  notOffered: [
    { size: size.id, colourway: 'gone', because: 'no sheet' },
    { size: 'large', colourway: 'gone', because: 'no sheet' },
    { size: 'large', colourway: 'dear', because: 'no sheet' },
  ],
};

describe('prices of a frame', () => {
  it('span what is made, and nothing that is not', () => {
    expect(priceSpan(frame)).toEqual({ fromMinor: 10_000, toMinor: 12_000 });
  });

  it('are the frame price where nothing differs', () => {
    expect(priceSpan(plain)).toEqual({ fromMinor: 10_000, toMinor: 10_000 });
  });
});

describe('the colourway that stands for a frame', () => {
  it('is the first that is made and not sold out', () => {
    const shown = shownFirst(frame);
    expect([shown.size.id, shown.colourway.code]).toEqual([size.id, 'dear']);
  });

  it('is a sold-out one when there is no other', () => {
    const soldOut: Frame = { ...plain, colourways: [{ ...one, stock: 'sold-out' }] };
    expect(shownFirst(soldOut).colourway.code).toBe('one');
  });
});

describe('offers of a day', () => {
  const offer = (id: string, starts: string | null, ends: string | null) =>
    ({ id, starts, ends }) as unknown as Promotion;
  const offers = [
    offer('always', null, null),
    offer('november', '2026-11-01', '2026-11-30'),
    offer('winter', '2026-12-01', null),
    offer('spring', '2026-03-01', '2026-05-31'),
    offer('new-year', '2027-01-01', null),
  ];
  const ids = (found: readonly Promotion[]) => found.map((p) => p.id);

  it.each([
    ['2026-11-01', ['always', 'november']],
    ['2026-11-30', ['always', 'november']],
    ['2026-12-01', ['always', 'winter']],
  ])('on %s run with their first and last day counted', (day, expected) => {
    expect(ids(runningOn(offers, day))).toEqual(expected);
  });

  it('that come later are listed by their first day', () => {
    expect(ids(comingAfter(offers, '2026-11-15'))).toEqual(['winter', 'new-year']);
  });
});

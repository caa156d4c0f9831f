import { expect, it } from 'vitest';
import { readPaperEntries } from '../../../src/islands/workroom/paperEntries.ts';

it('takes what was paid in minor units, with its day', () => {
  const typed = { paidAmount: '258.11', paidOn: '2026-11-25', paidHow: ' card ' };
  expect(readPaperEntries(typed, [null], 2)).toMatchObject({
    options: { paid: { amountMinor: 25811, on: '2026-11-25', how: 'card' } },
    wrong: [],
  });
});

it.each([
  [{ paidAmount: '12,50', paidOn: '2026-11-25' }, ['paidAmount']],
  [{ paidAmount: '-1', paidOn: '2026-11-25' }, ['paidAmount']],
  [{ paidAmount: '12.50' }, ['paidOn']],
  [{ carrier: 'Gull Post' }, ['parcelOn']],
])('leaves off the papers what cannot be read: %j', (typed, wrong) => {
  const read = readPaperEntries(typed, [null], 2);
  expect(read.wrong).toEqual(wrong);
  expect(read.options).not.toHaveProperty('paid');
  expect(read.options).not.toHaveProperty('parcel');
});

it('keeps the words of each pair with the pair', () => {
  const { options } = readPaperEntries({ '1.markings': 'B 2', '0.supplierRemark': ' ' }, [null, null], 2);
  expect([options.markings, options.supplierRemark]).toEqual([
    [null, 'B 2'],
    [null, null],
  ]);
});

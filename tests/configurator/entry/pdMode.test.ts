import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carryPd } from '../../../src/configurator/entry/pdMode.ts';
import type { Entries } from '../../../src/configurator/fields.ts';
import { readEntries } from '../../../src/configurator/readEntries.ts';
import { DATE, frameOf, shop } from '../shop.ts';

const to = (mode: 'each' | 'both', entries: Entries) => carryPd({ ...entries, 'pd.mode': mode }, shop.words);
const fitOf = (entries: Entries) =>
  readEntries(entries, { frame: frameOf('sanderling'), data: shop, date: DATE }).request.pairs[0]?.fit;

/** Half millimetres, as a PD is read. */
const eye = fc.integer({ min: 50, max: 80 }).map((halves) => halves / 2);

describe('the way in which a PD is given', () => {
  it('changes without loss: the sum, and back again the same eyes', () => {
    fc.assert(
      fc.property(eye, eye, (right, left) => {
        const each = { 'pd.right': String(right), 'pd.left': String(left) };
        const both = to('both', each);
        expect(fitOf(both)?.pd).toBe(right + left);
        expect(fitOf(to('each', both))?.pd).toEqual({ right, left });
      }),
    );
  });

  it('keeps one number one number: its halves are told as halves until an eye is measured', () => {
    const halves = to('each', { 'pd.both': '63', 'nearPd.both': '59' });
    expect(halves).toMatchObject({ 'pd.right': '31.5', 'pd.left': '31.5', 'nearPd.right': '29.5' });
    expect(fitOf(halves)?.pd).toBe(63);
    expect(to('both', halves)['pd.both']).toBe('63');
    expect(fitOf(to('each', to('both', halves)))?.pd).toBe(63);
    const measured = { ...halves, 'pd.right': '31', 'pd.left': '32.5' };
    expect(fitOf(measured)?.pd).toEqual({ right: 31, left: 32.5 });
    expect(to('both', measured)['pd.both']).toBe('63.5');
  });

  it('gives the other eye what one leaves of the sum, and writes in the page\u2019s digits', () => {
    expect(to('each', { 'pd.both': '63', 'pd.right': '31' })['pd.left']).toBe('32');
    const french = { ...shop.words, 'number.decimal': ',' };
    expect(carryPd({ 'pd.both': '63', 'pd.mode': 'each' }, french)['pd.right']).toBe('31,5');
  });

  it('leaves what cannot be read', () => {
    const odd = { 'pd.both': 'wide', 'pd.right': '31', 'pd.left': '' };
    expect(to('each', odd)).toMatchObject(odd);
    expect(to('both', odd)).toMatchObject(odd);
  });
});

import { describe, expect, it } from 'vitest';
import type { Entries } from '../../../src/configurator/fields.ts';
import { readList } from '../../../src/configurator/list/readList.ts';
import { DATE, shop } from '../shop.ts';

const read = (entries: Entries) => readList(entries, shop.shop, shop.words, DATE);
const powers: Entries = { 'right.sphere': '-3.25', 'left.sphere': '\u22122,75' };
const whole: Entries = { ...powers, 'pd.right': '31.5', 'pd.left': '32' };

describe('the entries of the list', () => {
  it.each<[string, Entries, readonly string[]]>([
    ['nothing', {}, ['sphere', 'pd']],
    ['one eye', { 'right.sphere': '-3' }, ['sphere', 'pd']],
    ['powers', powers, ['pd']],
    ['powers and PDs', whole, []],
    [
      'an eye that only balances',
      { 'right.sphere': '-3', 'left.balance': 'yes', ...{ 'pd.mode': 'both', 'pd.both': '63' } },
      [],
    ],
    ['reading without an add', { ...whole, use: 'near' }, ['add']],
    ['no prescription', { use: 'none' }, []],
  ])('with %s still need what is missing', (_, entries, needs) => {
    expect(read(entries).needs).toEqual(needs);
  });

  it('become one request for every frame', () => {
    expect(
      read({ ...whole, use: 'all', 'right.add': '2.00', wearer: 'child', codes: 'FIRSTPAIR' }).request,
    ).toEqual({
      date: DATE,
      language: 'en',
      codes: ['FIRSTPAIR'],
      wearer: 'child',
      use: 'all',
      prescription: { right: { sphere: -3.25, add: 2 }, left: { sphere: -2.75 } },
      fit: { pd: { right: 31.5, left: 32 } },
    });
  });

  it('leave out heights, which were measured in one frame', () => {
    const heights: Entries = { 'fittingHeight.right': '13', 'fittingHeight.left': '13' };
    expect(read({ ...whole, ...heights }).request).toEqual(read(whole).request);
  });

  it('leave the wearer to each frame where nobody was chosen', () => {
    expect(read(whole).request?.wearer).toBeNull();
  });

  it('tell of a lost sign as a worksheet does, and wait for it', () => {
    const { request, faults } = read({ ...whole, 'right.sphere': '3.25' });
    expect(request).toBeNull();
    expect(faults.map(({ field }) => field)).toEqual(['right.sphere']);
  });
});

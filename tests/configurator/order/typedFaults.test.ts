import { describe, expect, it } from 'vitest';
import { readBaseCurve, typedFaults } from '../../../src/configurator/order/typedFaults.ts';
import { parts } from './opened.ts';

const faults = (typed: Record<string, string>, prescribed = true) =>
  typedFaults(parts, typed, [{ id: 3, prescribed }]).map(({ field, code }) => `${field} ${code}`);

describe('what is typed of an order', () => {
  it('has no fault where nothing is typed', () => {
    expect(faults({})).toEqual([]);
  });

  it.each([
    [{ email: 'ada@mail.example', phone: '(207) 555-0142', 'pair.3.baseCurve': ' 4,25 D' }, []],
    [{ email: 'ada at mail' }, ['email email']],
    [{ phone: 'none' }, ['phone phone']],
    [{ 'pair.3.baseCurve': '14' }, ['pair.3.baseCurve baseCurve']],
    [{ name: 'x'.repeat(301) }, ['name long']],
    [{ name: `${'x'.repeat(300)}\u200b ` }, []],
    [{ address: `${'a\n'.repeat(13)}` }, ['address lines']],
    [{ address: 'x'.repeat(301) }, ['address long']],
    [{ notes: 'x'.repeat(5001) }, ['notes long']],
    [{ 'pair.3.written': 'x'.repeat(5001) }, ['pair.3.written long']],
  ])('%j has %j', (typed, expected) => {
    expect(faults(typed)).toEqual(expected);
  });

  it('of a paper does not count where there is no prescription', () => {
    expect(faults({ 'pair.3.written': 'x'.repeat(5001) }, false)).toEqual([]);
  });

  it.each([
    ['', null],
    ['0', 0],
    ['12', 12],
    ['12.1', null],
    ['-1', null],
    ['flat', null],
  ])('reads %j as a base curve of %j', (text, curve) => {
    expect(readBaseCurve(parts, text)).toBe(curve);
  });
});

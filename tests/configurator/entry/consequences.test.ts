import { describe, expect, it } from 'vitest';
import { consequencesOf } from '../../../src/configurator/entry/consequences.ts';
import type { Entries } from '../../../src/configurator/fields.ts';
import { readEntries } from '../../../src/configurator/readEntries.ts';
import { quote } from '../../../src/quote/quote.ts';
import { DATE, frameOf, shop } from '../shop.ts';

const on = { frame: frameOf('sanderling'), data: shop, date: DATE };

function of(entries: Entries) {
  const [pair] = readEntries(entries, on).request.pairs;
  if (pair === undefined) throw new Error('A request has a pair.');
  return consequencesOf(pair, shop);
}

const BOTH: Entries = { 'right.sphere': '-4.00', 'left.sphere': '+2.50', 'pd.right': '31', 'pd.left': '32' };

describe('one millimetre of error in the PD', () => {
  it('makes a tenth of the power in prism dioptres', () => {
    // Prentice's rule (P = c F with c in cm): 0.1 cm times 4 D, and 0.1 cm times 2.5 D.
    const { right, left } = of(BOTH);
    expect([right.perMmPrism, left.perMmPrism]).toEqual([0.4, 0.25]);
  });

  it('takes the power across, not the sphere alone', () => {
    // Cylinder at axis 90 has its power across: -1 - 2 = -3 D.
    const entries = { 'right.sphere': '-1.00', 'right.cylinder': '-2.00', 'right.axis': '90' };
    expect(of(entries).right.perMmPrism).toBe(0.3);
  });

  it('is not told of an eye without a power', () => {
    expect(of({ 'right.sphere': '-1.00' }).left.perMmPrism).toBeNull();
  });
});

describe('the powers of a use', () => {
  const entries: Entries = { ...BOTH, 'right.add': '2.00', 'left.add': '2.00' };

  it('take the whole add for reading and the share of the shop for screens', () => {
    expect(of({ ...entries, use: 'near' }).right).toMatchObject({ changed: true, ordered: { sphereD: -2 } });
    const half = shop.shop.habits.intermediateAddShare;
    expect(of({ ...entries, use: 'intermediate' }).left.ordered?.sphereD).toBe(2.5 + half * 2);
    expect(of({ ...entries, use: 'distance' }).right.changed).toBe(false);
  });

  it('are those of the ticket', () => {
    const now: Entries = { ...entries, use: 'near' };
    const reply = quote(shop, readEntries(now, on).request);
    if (!reply.ok) throw new Error('This request has an answer.');
    const pair = reply.answer.pairs[0];
    const { right, left } = of(now);
    expect([right.ordered?.sphereD, left.ordered?.sphereD]).toEqual([
      pair?.right?.ordered.sphere,
      pair?.left?.ordered.sphere,
    ]);
  });
});

it('works the near PD out only where none was entered', () => {
  const near = { ...BOTH, 'right.sphere': '0', 'left.sphere': '0', use: 'near' };
  // Half of a PD of 63 turned in for 400 mm without power: 59.02 / 2 = 29.51 (Jalie's form).
  expect(of({ ...near, 'pd.right': '31.5' }).right.nearPdMm).toBe(29.5);
  expect(of({ ...near, 'nearPd.right': '29', 'nearPd.left': '30' }).right.nearPdMm).toBeNull();
});

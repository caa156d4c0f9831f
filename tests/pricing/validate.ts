/** What holds of every priced order, worked by hand or generated. */
import { expect } from 'vitest';
import { LINE_KINDS } from '../../src/pricing/line.ts';
import { type PricedOrder, priceOrder } from '../../src/pricing/priceOrder.ts';
import type { Order } from './arbitraries.ts';

/** The order priced, with its invariants checked; fails when it is refused. */
export function priced({ offer, pairs, asked }: Order): PricedOrder {
  const reply = priceOrder(offer, pairs, asked);
  if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
  const { lines, totalMinor, codes, promotions } = reply.order;
  expect(totalMinor).toBe(lines.reduce((sum, { amount }) => sum + amount, 0));
  expect(totalMinor).toBeGreaterThanOrEqual(0);
  expect(lines.filter(({ kind }) => kind === 'shipping')).toHaveLength(1);
  for (const { amount, label, source, kind, pair } of lines) {
    expect(Number.isSafeInteger(amount) && !Object.is(amount, -0)).toBe(true);
    expect(label).not.toBe('');
    expect(source).not.toBe('');
    if (kind === 'promotion') expect(amount).toBeLessThan(0);
    if (kind === 'shipping' || kind === 'tax') expect(pair).toBeNull();
  }
  const orderKinds = lines.filter(({ pair, kind }) => pair === null || kind === 'promotion');
  // A credit on the parcel stands behind the parcel.
  const ranks = orderKinds.map(({ kind, pair }) =>
    kind === 'promotion' && pair === null ? LINE_KINDS.indexOf('shipping') + 0.5 : LINE_KINDS.indexOf(kind),
  );
  expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
  for (const { used, why } of [...codes, ...promotions]) expect(why === 'price.why.used').toBe(used);
  return reply.order;
}

/** Lines without their labels, for comparing by hand: `kind pair amount`. */
export function figures({ lines }: PricedOrder): string[] {
  return lines.map(({ kind, pair, amount }) => `${kind} ${pair ?? 'order'} ${amount}`);
}

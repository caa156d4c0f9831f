import type { TaxRate } from '../catalogue/shop.ts';
import { sumMinor } from '../money/minor.ts';
import { shareOf } from '../money/share.ts';
import type { Charge } from './charge.ts';
import type { Goods } from './goods.ts';
import type { Terms } from './terms.ts';

/**
 * One line for each tax rate: its share of what it names, taken on the whole order as it is left after promotions
 * and rounded once. With an exemption, one line of 0 that quotes the reason. `left` includes shipping.
 */
export function taxCharges({ taxes, exemption }: Terms, left: Goods): Charge[] {
  const source = 'shop';
  if (exemption) {
    const slots = { label: exemption.label, reason: exemption.reason };
    return [{ kind: 'tax', pair: null, label: { key: 'price.tax-exempt', slots }, amountMinor: 0, source }];
  }
  return taxes.map(({ label, ratePpm, on }) => {
    const base = taxable(on, left);
    const slots = { label, rate: { ppm: ratePpm }, base: { minor: base } };
    const amountMinor = shareOf(base, ratePpm);
    return { kind: 'tax', pair: null, label: { key: 'price.tax', slots }, amountMinor, source };
  });
}

/** The sum of those lines, minor units, without writing one. */
export function taxTotal({ taxes, exemption }: Terms, left: Goods): number {
  if (exemption) return 0;
  let total = 0;
  for (const { ratePpm, on } of taxes) total = sumMinor([total, shareOf(taxable(on, left), ratePpm)]);
  return total;
}

/** Sum of the parts that a rate names, minor units. */
function taxable(on: TaxRate['on'], { pairs, shipping }: Goods): number {
  const [frame, lenses] = [on.includes('frame'), on.includes('lenses')];
  let sum = on.includes('shipping') ? shipping : 0;
  for (const pair of pairs) sum = sumMinor([sum, frame ? pair.frame : 0, lenses ? pair.lenses : 0]);
  return sum;
}

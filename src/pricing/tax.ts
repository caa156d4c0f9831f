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
  const parts = {
    frame: sumMinor(left.pairs.map(({ frame }) => frame)),
    lenses: sumMinor(left.pairs.map(({ lenses }) => lenses)),
    shipping: left.shipping,
  };
  return taxes.map(({ label, ratePpm, on }) => {
    const base = sumMinor([...new Set(on)].map((part) => parts[part]));
    const slots = { label, rate: { ppm: ratePpm }, base: { minor: base } };
    const amountMinor = shareOf(base, ratePpm);
    return { kind: 'tax', pair: null, label: { key: 'price.tax', slots }, amountMinor, source };
  });
}

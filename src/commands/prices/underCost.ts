/**
 * Pairs that would sell for less than they cost, on each stretch of days with the same promotions, with and without
 * codes. Surcharges for strength are left out on both sides: they are there to pay for themselves. Where a part has no
 * cost written down it counts as nothing, so what is told is true whatever that cost is.
 */
import type { Catalogue } from '../../catalogue/catalogue.ts';
import type { Costs } from '../../catalogue/schema/costs.ts';
import { goodsTotal } from '../../pricing/goods.ts';
import { listSums } from '../../pricing/listPrice.ts';
import type { PricedPair } from '../../pricing/pair.ts';
import { applyPromotions } from '../../pricing/promotions.ts';
import { pairInScope } from '../../pricing/scope.ts';
import { termsOf } from '../../pricing/terms.ts';
import { turningDays } from './calendar.ts';
import { type CostedFrame, type CostedLenses, costedFrames, costedLenses } from './costed.ts';

export interface Loss {
  readonly frame: string;
  readonly size: string;
  readonly colourway: string;
  readonly design: string;
  readonly material: string;
  readonly tint: string;
  readonly coating: string;
  /** Ready-made lenses; null: made to order. */
  readonly stock: string | null;
  /** First day of the stretch, codes typed, pairs alike in the order. */
  readonly from: string;
  readonly codes: readonly string[];
  readonly pairs: number;
  /** What the shop keeps of the order before tax, and what it costs, minor units. */
  readonly takeMinor: number;
  readonly costMinor: number;
}

export interface UnderCost {
  /** The worst pair of each frame that loses, largest loss first. */
  readonly losses: readonly Loss[];
  /** How many different packages lose somewhere. */
  readonly packages: number;
  /** Entries without a cost, such as `frames/dunlin`. */
  readonly unknown: readonly string[];
}

/** Codes that may be typed together: none, each by itself, all. */
function codeSets({ promotions }: Catalogue): readonly (readonly string[])[] {
  const codes = promotions.flatMap(({ code }) => code ?? []);
  return [[], ...codes.map((code) => [code]), ...(codes.length > 1 ? [codes] : [])];
}

interface Occasion {
  readonly from: string;
  readonly codes: readonly string[];
  readonly pairs: number;
  /** What is kept of so many pairs alike, minor units. */
  readonly take: (pair: PricedPair) => number;
}

/** Every day, code and number of pairs on which a price may differ. */
function occasions(catalogue: Catalogue, costs: Costs, date: string): Occasion[] {
  const counts = [...new Set([1, ...catalogue.promotions.map(({ scope }) => scope.leastPairs)])];
  return turningDays(catalogue.promotions, date).flatMap((from) =>
    codeSets(catalogue).flatMap((codes) => {
      const found = termsOf(catalogue, {
        ...{ date: from, codes, taxExemption: null },
        destination: catalogue.shop.destination,
      });
      if (!found.ok) return [];
      const { candidates, shipping } = found.terms;
      const live = candidates.filter(({ outOfDate }) => outOfDate === null);
      return counts.map((pairs): Occasion => {
        const take = (pair: PricedPair) => {
          const all = Array.from({ length: pairs }, () => pair);
          const goods = { pairs: all.map(listSums), shipping: shipping.amountMinor };
          const { left } = applyPromotions(catalogue, live, all, goods);
          return goodsTotal(left) + (costs.parcel === null ? 0 : left.shipping);
        };
        return { from, codes, pairs, take };
      });
    }),
  );
}

/** What of a pair promotions look at, so that pairs alike are reckoned once. */
const scopesOf = ({ promotions }: Catalogue, pair: PricedPair) =>
  promotions.map(({ scope }) => (pairInScope(scope, pair) ? 1 : 0)).join('');

function worse(one: Loss, than: Loss | null): Loss {
  return than === null || one.costMinor - one.takeMinor > than.costMinor - than.takeMinor ? one : than;
}

/** All pairs that lose, from `date` on. */
export function underCost(catalogue: Catalogue, costs: Costs, date: string): UnderCost {
  const { frames, unknown: unknownFrames } = costedFrames(catalogue, costs);
  const { lenses, unknown: unknownLenses } = costedLenses(catalogue, costs);
  const when = occasions(catalogue, costs, date);
  const known = new Map<string, number>();
  const worst = new Map<string, Loss>();
  let packages = 0;
  for (const frame of frames)
    for (const lens of lenses) {
      const pair = { frame: frame.priced, lenses: lens.priced };
      const key = `${frame.key} ${lens.key} ${scopesOf(catalogue, pair)}`;
      let loses = false;
      when.forEach(({ from, codes, pairs, take }, at) => {
        const costMinor = pairs * (frame.costMinor + lens.costMinor + costs.work) + (costs.parcel ?? 0);
        const takeMinor = known.get(`${at} ${key}`) ?? take(pair);
        known.set(`${at} ${key}`, takeMinor);
        if (takeMinor >= costMinor) return;
        loses = true;
        const loss = { ...told(frame, lens), from, codes, pairs, takeMinor, costMinor };
        worst.set(frame.priced.frame.id, worse(loss, worst.get(frame.priced.frame.id) ?? null));
      });
      if (loses) packages += 1;
    }
  const losses = [...worst.values()].toSorted(
    (a, b) => b.costMinor - b.takeMinor - (a.costMinor - a.takeMinor),
  );
  return { losses, packages, unknown: [...unknownFrames, ...unknownLenses] };
}

function told({ priced: { frame, size, colourway } }: CostedFrame, { priced }: CostedLenses) {
  return {
    ...{ frame: frame.id, size: size.id, colourway: colourway.code },
    ...{ design: priced.design.id, material: priced.material.id },
    ...{ tint: priced.tint?.id ?? '', coating: priced.coating?.id ?? '', stock: priced.stock?.id ?? null },
  };
}

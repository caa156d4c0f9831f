/** Prices that do not end as the shop has decided. */
import type { Catalogue } from '../../catalogue/catalogue.ts';
import { listedPrices } from './listedPrices.ts';

export interface OddPrice {
  readonly source: string;
  readonly what: string;
  readonly minor: number;
  /** The next prices with an end of the shop, below and above. Below may be missing. */
  readonly belowMinor: number | null;
  readonly aboveMinor: number;
}

/** How many minor units an end speaks of: 9.00 of the last ten whole units, 0.95 of one. */
function period(ending: number, digits: number): number {
  return 10 ** Math.max(digits, String(ending).length);
}

/** The nearest amounts with an allowed end at or below, and above, `minor`. */
function neighbours(minor: number, endings: readonly number[], digits: number) {
  const below = endings.map((ending) => {
    const every = period(ending, digits);
    return Math.floor((minor - ending) / every) * every + ending;
  });
  const above = endings.map((ending, at) => (below[at] ?? 0) + period(ending, digits));
  return { below: Math.max(...below), above: Math.min(...above) };
}

interface Shown {
  readonly source: string;
  readonly what: string;
  readonly minor: number;
}

/** A frame's price in each colourway and size, equal ones once. */
function framePrices({ frames }: Catalogue): Shown[] {
  return frames.flatMap(({ id, model, priceMinor, colourways, sizes }) => {
    const byPrice = new Map<number, Shown>();
    for (const colourway of colourways)
      for (const size of sizes) {
        const minor = priceMinor + colourway.priceDifferenceMinor + size.priceDifferenceMinor;
        const what = `Frame ${model}, ${colourway.name}, ${size.id}`;
        if (!byPrice.has(minor)) byPrice.set(minor, { source: `frames/${id}`, what, minor });
      }
    return [...byPrice.values()];
  });
}

/** Prices as the shopper meets them: frames as sold, and what is not free of the lenses. */
function shownPrices(catalogue: Catalogue): Shown[] {
  const apart = ['frame', 'colourway', 'size', 'shipping'];
  const lenses = listedPrices(catalogue).filter(({ kind, minor }) => minor !== 0 && !apart.includes(kind));
  return [...framePrices(catalogue), ...lenses];
}

/** Those of them whose end is none of `endings`; none where the shop has no rule. */
export function oddPrices(catalogue: Catalogue): OddPrice[] {
  const { endings } = catalogue.priceHabits;
  if (endings.length === 0) return [];
  const digits = catalogue.shop.currencyDigits;
  return shownPrices(catalogue).flatMap(({ source, what, minor }) => {
    const { below, above } = neighbours(minor, endings, digits);
    if (below === minor) return [];
    return [{ source, what, minor, belowMinor: below < 0 ? null : below, aboveMinor: above }];
  });
}

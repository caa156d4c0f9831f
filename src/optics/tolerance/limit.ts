/** Finds the limit that a table holds for an ordered value, and compares a deviation with it. */
import type { Band, Basis, LimitUnit } from './table.ts';

/** Outcome of one item; never a silent pass where nothing was held or measured. */
export type ItemOutcome = 'pass' | 'fail' | 'no limit held' | 'not measured';

/** The band that an ordered value fell into: `quantity` above `over` (null: from 0) and up to `upTo`. */
export interface ChosenBand {
  readonly quantity: string;
  readonly value: number;
  readonly over: number | null;
  readonly upTo: number;
}

/** A limit in the item's own unit, with the band it came from. */
export interface HeldLimit {
  /** Plus or minus; null: no limit held. */
  readonly limit: number | null;
  readonly unit: LimitUnit;
  readonly band: ChosenBand | null;
}

/** One inspected item. */
export interface InspectedItem {
  readonly item: string;
  readonly eye: 'right' | 'left' | 'both';
  readonly outcome: ItemOutcome;
  readonly ordered: number;
  readonly measured: number | null;
  /** Measured less ordered, rounded to 0.01. */
  readonly deviation: number | null;
  readonly limit: number | null;
  readonly unit: LimitUnit;
  readonly band: ChosenBand | null;
  readonly basis: Basis;
}

/** The limit for an ordered value (its absolute counts); a percentage comes back in `unit`. */
export function limitFor(
  bands: readonly Band[] | null,
  quantity: string,
  orderedValue: number,
  unit: LimitUnit,
): HeldLimit {
  const value = Math.abs(rounded(orderedValue, 3));
  let over: number | null = null;
  for (const band of bands ?? []) {
    const inside = (band.including ?? true) ? value <= band.upTo : value < band.upTo;
    if (inside) {
      const limit = band.limit !== null && band.unit === '%' ? (band.limit / 100) * value : band.limit;
      return {
        limit,
        unit: band.unit === '%' ? unit : band.unit,
        band: { quantity, value, over, upTo: band.upTo },
      };
    }
    over = band.upTo;
  }
  return { limit: null, unit, band: null };
}

/** Puts an item together: rounds the deviation to 0.01 and compares it with the limit. */
export function judge(
  item: Pick<InspectedItem, 'item' | 'eye' | 'ordered' | 'measured' | 'basis'>,
  rawDeviation: number | null,
  held: HeldLimit,
): InspectedItem {
  const deviation = rawDeviation === null ? null : rounded(rawDeviation);
  return { ...item, outcome: outcomeOf(deviation, held.limit), deviation, ...held };
}

function outcomeOf(deviation: number | null, limit: number | null): ItemOutcome {
  if (limit === null) return 'no limit held';
  if (deviation === null) return 'not measured';
  return Math.abs(deviation) <= limit + 1e-9 ? 'pass' : 'fail';
}

/** Rounded to `places` decimals (2 as a rule), halves away from zero; floating-point dust does not tip a half. */
export function rounded(value: number, places = 2): number {
  const scale = 10 ** places;
  return (Math.sign(value) * Math.round(Math.abs(value) * scale + 1e-7)) / scale + 0;
}

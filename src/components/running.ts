/** Which promotions a page shows for its day. */
import type { Promotion } from '../catalogue/promotion.ts';

/** Promotions whose days hold `date` (civil, both ends included), in declared order. */
export function runningOn(promotions: readonly Promotion[], date: string): readonly Promotion[] {
  return promotions.filter(
    (p) => (p.starts === null || p.starts <= date) && (p.ends === null || p.ends >= date),
  );
}

/** Promotions that begin after `date`, the soonest first. */
export function comingAfter(promotions: readonly Promotion[], date: string): readonly Promotion[] {
  return promotions
    .filter((p) => p.starts !== null && p.starts > date)
    .sort((a, b) => ((a.starts ?? '') < (b.starts ?? '') ? -1 : 1));
}

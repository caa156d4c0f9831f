/** All that `npm run prices` has to say, as data: text, JSON and CSV are written from it. */
import type { Catalogue } from '../../catalogue/catalogue.ts';
import type { Costs } from '../../catalogue/schema/costs.ts';
import { type Calendar, calendarOf } from './calendar.ts';
import { type OddPrice, oddPrices } from './endings.ts';
import { listedPrices } from './listedPrices.ts';
import { type Move, movesBetween } from './moves.ts';
import type { Commit } from './pastShop.ts';
import { type Term, termsBetween } from './terms.ts';
import { typicalPrices } from './typicalPrices.ts';
import { type UnderCost, underCost } from './underCost.ts';

export interface PricesReport {
  readonly shop: string;
  readonly language: string;
  readonly currency: string;
  /** Digits after the point; amounts are in minor units. */
  readonly digits: number;
  readonly timeZone: string;
  /** Civil date that is judged for. */
  readonly date: string;
  /** Null: nothing to compare with, and `notCompared` says why. */
  readonly against: Commit | null;
  readonly notCompared: string | null;
  readonly moves: readonly Move[];
  readonly terms: readonly Term[];
  readonly calendar: Calendar;
  /** Null: there are no costs. */
  readonly underCost: UnderCost | null;
  /** Null: the shop has no rule for how prices end. */
  readonly oddPrices: readonly OddPrice[] | null;
}

/** What the shop is compared with. */
export type Against =
  | { readonly commit: Commit; readonly catalogue: Catalogue }
  | { readonly notCompared: string };

/** Old sentences may lack what this version of the program says. */
const spokenAsNow = (old: Catalogue, now: Catalogue): Catalogue => ({ ...old, words: now.words });

/** Moves of listed prices and typical pairs; amounts of two currencies are not compared. */
function compared(now: Catalogue, against: Against, date: string) {
  if (!('commit' in against))
    return { against: null, notCompared: against.notCompared, moves: [], terms: [] };
  const { commit, catalogue: old } = against;
  const { currency } = now.shop;
  if (old.shop.currency !== currency) {
    const notCompared = `The currency was ${old.shop.currency} and is ${currency}: amounts cannot be compared.`;
    return { against: commit, notCompared, moves: [], terms: termsBetween(old, now) };
  }
  const watch = now.priceHabits.typical;
  const prices = (one: Catalogue) => [...listedPrices(one), ...typicalPrices(one, watch, date)];
  return {
    against: commit,
    notCompared: null,
    moves: movesBetween(prices(spokenAsNow(old, now)), prices(now)),
    terms: termsBetween(old, now),
  };
}

/** The whole report for a day. */
export function pricesReport(
  now: Catalogue,
  against: Against,
  costs: Costs | null,
  date: string,
): PricesReport {
  const { name, language, currency, currencyDigits, timeZone } = now.shop;
  return {
    ...{ shop: name, language, currency, digits: currencyDigits, timeZone, date },
    ...compared(now, against, date),
    calendar: calendarOf(now.promotions, date, timeZone),
    underCost: costs && underCost(now, costs, date),
    oddPrices: now.priceHabits.endings.length === 0 ? null : oddPrices(now),
  };
}

/** Whether there is something that the owner should mend or mean. */
export function needsALook({ calendar, underCost: losses, oddPrices: odd }: PricesReport): boolean {
  return (
    calendar.overlaps.some(({ joins }) => joins === 'one-sided') ||
    (losses?.losses.length ?? 0) > 0 ||
    (odd?.length ?? 0) > 0
  );
}

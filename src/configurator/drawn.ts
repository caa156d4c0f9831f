/** The drawings of what a worksheet asks for, beside an option in place of the present one. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { ReportedChoice } from '../quote/options.ts';
import type { PairRequest, QuoteRequest } from '../quote/request.ts';
import { resolvePair } from '../quote/resolve.ts';
import { situate } from '../quote/situation.ts';
import { type DrawingsView, drawingsView } from '../quote/view/drawings.ts';

/** An option whose lenses are drawn beside the present ones. */
export interface Compared {
  readonly kind: ReportedChoice;
  readonly id: string;
}

/** The view of the one pair of a request; null where its names are not known. */
export function drawn(offer: Offer, request: QuoteRequest, compared: Compared | null): DrawingsView | null {
  const [pair] = request.pairs;
  const situation = pair && situationOf(offer, request.date, pair);
  if (!situation) return null;
  const other =
    compared === null
      ? null
      : situationOf(offer, request.date, {
          ...pair,
          lenses: { ...pair.lenses, [compared.kind]: compared.id },
        });
  return drawingsView(situation, other);
}

function situationOf(offer: Offer, date: string, pair: PairRequest) {
  const resolved = resolvePair(offer, pair, '', []);
  return resolved && situate(offer.shop.habits, date, pair, resolved.frame, resolved.lenses);
}

/** What promotions do for a frame on the day of the build. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Frame } from '../catalogue/frame.ts';
import type { Promotion } from '../catalogue/promotion.ts';
import { framePrice } from '../pricing/framePrice.ts';
import { isOffered } from './frameFacts.ts';
import { runningOn } from './running.ts';

export interface FrameOffers {
  /** Promotions that run, apply by themselves and are for this frame or its collection, in declared order. */
  readonly promotions: readonly Promotion[];
  /** Lowest price of the frame by itself with them, minor units; null: none of them lowers it. */
  readonly fromMinor: number | null;
}

/** Those that are for all frames alike are left to the page of offers. */
function isForFrame({ scope, code }: Promotion, frame: Frame): boolean {
  if (code !== null || (scope.frames === null && scope.collections === null)) return false;
  return (
    (scope.frames?.includes(frame.id) ?? true) && (scope.collections?.includes(frame.collection) ?? true)
  );
}

const kept = new WeakMap<
  Frame,
  { readonly offer: Offer; readonly date: string; readonly found: FrameOffers }
>();

/** The offers of a frame on a civil date. A frame's card is on many pages, and they are worked out once. */
export function frameOffers(offer: Offer, frame: Frame, date: string): FrameOffers {
  const known = kept.get(frame);
  if (known?.offer === offer && known.date === date) return known.found;
  const found = makeOffers(offer, frame, date);
  kept.set(frame, { offer, date, found });
  return found;
}

function makeOffers(offer: Offer, frame: Frame, date: string): FrameOffers {
  const promotions = runningOn(offer.promotions, date).filter((one) => isForFrame(one, frame));
  if (promotions.length === 0) return { promotions, fromMinor: null };
  const prices = frame.sizes.flatMap((size) =>
    frame.colourways
      .filter((colourway) => isOffered(frame, size, colourway))
      .map((colourway) => framePrice(offer, { frame, size, colourway }, date)),
  );
  const due = Math.min(...prices.map(({ dueMinor }) => dueMinor));
  const list = Math.min(...prices.map(({ listMinor }) => listMinor));
  return { promotions, fromMinor: due < list ? due : null };
}

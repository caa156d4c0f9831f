/** Judged pairs as the pricing sees them, and its lines as the answer's price. */
import type { Offer } from '../catalogue/catalogue.ts';
import { strongestMeridianD } from '../optics/prescription.ts';
import { prismAmount } from '../optics/prism.ts';
import type { Asked, PricedLenses, PricedPair } from '../pricing/pair.ts';
import { type PricedOrder, priceOrder } from '../pricing/priceOrder.ts';
import { round2 } from '../rules/round.ts';
import type { EyeSituation, Situation } from '../rules/situation.ts';
import type { PriceAnswer } from './answer.ts';
import type { Fault } from './fault.ts';
import type { ShopFrame } from './frameShape.ts';
import type { QuoteRequest } from './request.ts';

/** What is priced of lenses: their options and the strength of the stronger eye. */
export function pricedLenses(situation: Situation): PricedLenses {
  const { right, left, design, material, tint, coating, stock } = situation;
  const none = situation.use === 'none';
  const most = (of: (eye: EyeSituation) => number) => round2(Math.max(of(right), of(left)));
  return {
    design,
    material,
    tint,
    coating,
    stock,
    strongestMeridianD: most(({ ordered }) => (ordered ? Math.abs(strongestMeridianD(ordered)) : 0)),
    cylinderD: most(({ ordered }) => Math.abs(ordered?.cylinderD ?? 0)),
    prism: none ? 0 : most(({ prescribed }) => prismAmount(prescribed.prism)),
    addD: most(({ orderedAddD }) => orderedAddD),
  };
}

/** What is priced of a pair. */
const pricedPair = ({ resolved, situation }: Judged): PricedPair => ({
  frame: resolved.shopFrame,
  lenses: pricedLenses(situation),
});

/** What pricing needs of a judged pair. */
interface Judged {
  readonly resolved: { readonly shopFrame: ShopFrame | null };
  readonly situation: Situation;
}

/** What a request asks of the pricing; an absent destination is the shop's own. */
export const askedOf = (
  { shop }: Offer,
  { date, destination, taxExemption, codes }: QuoteRequest,
): Asked => ({
  date,
  destination: destination ?? shop.destination,
  taxExemption: taxExemption ?? null,
  codes: codes ?? [],
});

/** The order's price; null with the faults added where the destination or exemption is not known. */
export function priceOf(
  offer: Offer,
  request: QuoteRequest,
  pairs: readonly Judged[],
  faults: Fault[],
): PricedOrder | null {
  const reply = priceOrder(offer, pairs.map(pricedPair), askedOf(offer, request));
  if (reply.ok) return reply.order;
  faults.push(...reply.faults);
  return null;
}

/** Price as the answer carries it. */
export const priceAnswer = (
  { currency, lines, totalMinor, codes }: PricedOrder,
  say: CodeSentence,
): PriceAnswer => ({
  currency,
  lines,
  total: totalMinor,
  codes: codes.map(({ code, used, why, figures }) => ({ code, used, message: say(why, figures) })),
});

type CodeSentence = (key: string, figures: Readonly<Record<string, number | string>>) => string;

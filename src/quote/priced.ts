/** Judged pairs as the pricing sees them, and its lines as the answer's price. */
import type { Offer } from '../catalogue/catalogue.ts';
import { strongestMeridianD } from '../optics/prescription.ts';
import { prismAmount } from '../optics/prism.ts';
import type { PricedPair } from '../pricing/pair.ts';
import { type PricedOrder, priceOrder } from '../pricing/priceOrder.ts';
import { round2 } from '../rules/round.ts';
import type { Fault, PriceAnswer } from './answer.ts';
import type { JudgedPair } from './quote.ts';
import type { QuoteRequest } from './request.ts';

/** What is priced of a pair: its goods and the strength of its stronger eye. */
export function pricedPair({ resolved, situation }: JudgedPair): PricedPair {
  const eyes = [situation.right, situation.left];
  const most = (of: (eye: (typeof eyes)[number]) => number) =>
    Math.max(...eyes.map((eye) => round2(of(eye))));
  const none = situation.use === 'none';
  return {
    frame: resolved.shopFrame,
    lenses: {
      ...resolved.lenses,
      stock: situation.stock,
      strongestMeridianD: most(({ ordered }) => (ordered ? Math.abs(strongestMeridianD(ordered)) : 0)),
      cylinderD: most(({ ordered }) => Math.abs(ordered?.cylinderD ?? 0)),
      prism: none ? 0 : most(({ prescribed }) => prismAmount(prescribed.prism)),
      addD: most(({ orderedAddD }) => orderedAddD),
    },
  };
}

/** The order's price; null with the faults added where the destination or exemption is not known. */
export function priceOf(
  offer: Offer,
  request: QuoteRequest,
  pairs: readonly JudgedPair[],
  faults: Fault[],
): PricedOrder | null {
  const reply = priceOrder(offer, pairs.map(pricedPair), {
    date: request.date,
    destination: request.destination ?? offer.shop.destination,
    taxExemption: request.taxExemption ?? null,
    codes: request.codes ?? [],
  });
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

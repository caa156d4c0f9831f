/**
 * The one door: a request in; verdict, figures and price out. The worksheet, the lists, the workroom and the command
 * line all ask here.
 */
import type { Offer } from '../catalogue/catalogue.ts';
import { say } from '../catalogue/words.ts';
import type { Reply } from './answer.ts';
import type { Fault } from './fault.ts';
import { hardest } from './judge.ts';
import { judgePair } from './judgePair.ts';
import { priceAnswer, priceOf } from './priced.ts';
import type { QuoteRequest } from './request.ts';

/** The answer to a request, or every fault in it. Pure: the date is in the request. */
export function quote(offer: Offer, request: QuoteRequest): Reply {
  const faults: Fault[] = [];
  const pairs = request.pairs.map((pair, at) => judgePair(offer, request.date, pair, `pairs.${at}`, faults));
  const whole = pairs.filter((pair) => pair !== null);
  const price = priceOf(offer, request, whole, faults);
  if (price === null || faults.length > 0) return { ok: false, faults };
  const answers = whole.map(({ answer }) => answer);
  return {
    ok: true,
    answer: {
      verdict: hardest(answers.map(({ verdict }) => verdict)),
      pairs: answers,
      price: priceAnswer(price, (key, figures) => say(offer.words, key, figures)),
    },
  };
}

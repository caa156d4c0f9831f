/**
 * The one door: a request in; verdict, figures and price out. The worksheet, the lists, the workroom and the command
 * line all ask here.
 */
import type { Offer } from '../catalogue/catalogue.ts';
import { say } from '../catalogue/words.ts';
import type { Fault, PairAnswer, Reply } from './answer.ts';
import { hardest, judge, toFinding, verdictOf } from './judge.ts';
import { pairFaults } from './plausible.ts';
import { priceAnswer, priceOf } from './priced.ts';
import { lensAnswer } from './report.ts';
import type { PairRequest, QuoteRequest } from './request.ts';
import { type ResolvedPair, resolvePair } from './resolve.ts';
import { situate } from './situation.ts';

/** A pair with everything that is known of it. */
export interface JudgedPair {
  readonly resolved: ResolvedPair;
  readonly situation: ReturnType<typeof situate>;
  readonly answer: PairAnswer;
}

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

/** One pair judged; null with the faults added where it cannot be read. */
export function judgePair(
  offer: Offer,
  date: string,
  request: PairRequest,
  path: string,
  faults: Fault[],
): JudgedPair | null {
  const implausible = pairFaults(request, path);
  faults.push(...implausible);
  const resolved = resolvePair(offer, request, path, faults);
  if (resolved === null || implausible.length > 0) return null;
  const situation = situate(offer.shop.habits, date, request, resolved.frame, resolved.lenses);
  const outcomes = judge(situation);
  return {
    resolved,
    situation,
    answer: {
      verdict: verdictOf(outcomes),
      findings: outcomes.map((outcome) => toFinding(offer.words, outcome)),
      right: lensAnswer(situation, situation.right),
      left: lensAnswer(situation, situation.left),
      alternatives: [],
    },
  };
}

/** An answer with what could be done about it: remedies, alternatives, a way out. Slower than the answer alone. */
import type { Offer } from '../catalogue/catalogue.ts';
import { alternativesTo } from './alternatives.ts';
import type { Answer, PairAnswer, Reply } from './answer.ts';
import { quote } from './quote.ts';
import { remediesFor } from './remedies.ts';
import type { QuoteRequest } from './request.ts';
import { orderTotal } from './total.ts';
import { wayOutOf } from './wayOut.ts';

/** The reply of the one door with every pair advised. */
export function quoteWithAdvice(offer: Offer, request: QuoteRequest): Reply {
  const reply = quote(offer, request);
  if (!reply.ok) return reply;
  const pairs = reply.answer.pairs.map((_, at) => advisedPair(offer, request, reply.answer, at));
  return { ok: true, answer: { ...reply.answer, pairs } };
}

/** One pair of an answer with its remedies, alternatives and way out. */
export function advisedPair(offer: Offer, request: QuoteRequest, answer: Answer, at: number): PairAnswer {
  const steps = adviceSteps(offer, request, answer, at);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

/** The same in steps, between which a thread may hear whether the advice is still wanted. */
export function* adviceSteps(
  offer: Offer,
  request: QuoteRequest,
  answer: Answer,
  at: number,
): Generator<undefined, PairAnswer> {
  const pair = request.pairs[at];
  const plain = answer.pairs[at];
  if (pair === undefined || plain === undefined) throw new RangeError(`The answer has no pair ${at}.`);
  const remedies = remediesFor(offer, request.date, pair, plain.findings, orderTotal(offer, request, at));
  yield;
  const alternatives = alternativesTo(offer, request, at);
  yield;
  return {
    ...plain,
    findings: plain.findings.map((finding, index) => ({ ...finding, remedy: remedies[index] ?? null })),
    alternatives,
    wayOut: plain.verdict === 'refused' ? wayOutOf(offer, request, at, answer.price.total) : null,
  };
}

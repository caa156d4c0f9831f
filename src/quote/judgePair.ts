/** One pair judged, before its price: what the door, the options and the remedies are made of. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Situation } from '../rules/situation.ts';
import type { PairAnswer } from './answer.ts';
import type { Fault } from './fault.ts';
import { judge, toFinding, verdictOf } from './judge.ts';
import { pairFaults } from './plausible.ts';
import { lensAnswer } from './report.ts';
import type { PairRequest } from './request.ts';
import { type ResolvedPair, resolvePair } from './resolve.ts';
import type { Said } from './sentences.ts';
import { situate } from './situation.ts';

/** A pair before any rule is asked. */
export interface SituatedPair {
  readonly resolved: ResolvedPair;
  readonly situation: Situation;
}

/** A pair with everything that is known of it. */
export interface JudgedPair extends SituatedPair {
  readonly answer: PairAnswer;
}

/** One pair judged; null with the faults added where it cannot be read. */
export function judgePair(
  offer: Offer,
  date: string,
  request: PairRequest,
  path: string,
  faults: Fault[],
): JudgedPair | null {
  const situated = situatePair(offer, date, request, path, faults);
  return situated && judgeSituated(situated, (outcome) => toFinding(offer, outcome));
}

/** The situation of one pair; null with the faults added where it cannot be read. */
export function situatePair(
  offer: Offer,
  date: string,
  request: PairRequest,
  path: string,
  faults: Fault[],
): SituatedPair | null {
  const implausible = pairFaults(request, path);
  faults.push(...implausible);
  const resolved = resolvePair(offer, request, path, faults);
  if (resolved === null || implausible.length > 0) return null;
  return {
    resolved,
    situation: situate(offer.shop.habits, date, request, resolved.frame, resolved.lenses),
  };
}

/** What every rule says of a pair, with its figures. */
export function judgeSituated({ resolved, situation }: SituatedPair, said: Said): JudgedPair {
  const outcomes = judge(situation);
  return {
    resolved,
    situation,
    answer: {
      verdict: verdictOf(outcomes),
      findings: outcomes.map(said),
      right: lensAnswer(situation, situation.right),
      left: lensAnswer(situation, situation.left),
      alternatives: [],
      wayOut: null,
    },
  };
}

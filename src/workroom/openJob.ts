/** A job as the engine sees it today: every pair judged again for the order's date, and its price. */
import type { Offer } from '../catalogue/catalogue.ts';
import { formerNames } from '../catalogue/formerNames.ts';
import type { Frame, ListedFrame } from '../catalogue/frame.ts';
import { say } from '../catalogue/words.ts';
import type { Workroom } from '../catalogue/workroom.ts';
import type { Answer } from '../quote/answer.ts';
import type { Fault } from '../quote/fault.ts';
import { hardest } from '../quote/judge.ts';
import { type JudgedPair, judgePair } from '../quote/judgePair.ts';
import { priceAnswer, priceOf } from '../quote/priced.ts';
import { followFormer, type MovedFrame } from './formerFrames.ts';
import type { Job } from './job.ts';

/** A frame that may have had other ids. */
type RenamedFrame = Frame & Partial<Pick<ListedFrame, 'formerIds'>>;

/** What the workroom needs of the shop. */
export interface WorkroomOffer extends Offer {
  readonly frames: readonly RenamedFrame[];
  readonly workroom: Workroom;
}

export interface OpenedJob {
  /** Its frames by their names of today. */
  readonly job: Job;
  /** Those that the order names otherwise. */
  readonly moved: readonly MovedFrame[];
  /** Whether the order speaks the language that it is read in here. */
  readonly sameLanguage: boolean;
  /** In the order's own order; null where a pair cannot be read any more. */
  readonly pairs: readonly (JudgedPair | null)[];
  /** What the shop answers now; null where a pair or the destination cannot be read. */
  readonly answer: Answer | null;
  /** What in the order the shop cannot read; paths as in the request. */
  readonly faults: readonly Fault[];
}

/** Judges and prices a job for its own date. Never throws for what an order holds. */
export function openJob(read: Job, offer: Offer & { readonly frames: readonly RenamedFrame[] }): OpenedJob {
  const { job, moved } = followFormer(read, formerNames(offer.frames));
  const faults: Fault[] = [];
  const request = { ...job.order.request, date: job.date };
  const pairs = request.pairs.map((pair, at) => judgePair(offer, job.date, pair, `pairs.${at}`, faults));
  const whole = pairs.filter((pair) => pair !== null);
  const order = whole.length === pairs.length ? priceOf(offer, request, whole, faults) : null;
  const answers = whole.map(({ answer }) => answer);
  const answer = order && {
    verdict: hardest(answers.map(({ verdict }) => verdict)),
    pairs: answers,
    price: priceAnswer(order, (key, slots) => say(offer.words, key, slots)),
  };
  const { language } = request;
  const sameLanguage = language === undefined || language === offer.shop.language;
  return { job, moved, sameLanguage, pairs, answer, faults };
}

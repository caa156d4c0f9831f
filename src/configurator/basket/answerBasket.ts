/** The basket judged and priced as one order by the same engine as a single pair. */
import type { Offer } from '../../catalogue/catalogue.ts';
import type { Frame } from '../../catalogue/frame.ts';
import type { Answer, PairAnswer, PriceAnswer } from '../../quote/answer.ts';
import { quote } from '../../quote/quote.ts';
import type { QuoteRequest } from '../../quote/request.ts';
import { type FieldFault, toFieldFault } from '../fieldFault.ts';
import type { NotHad } from '../keeping/offered.ts';
import { orderTerms } from '../orderTerms.ts';
import type { ShopData } from '../shopData.ts';
import { type Standing, standingOf } from '../standing.ts';
import type { Basket } from './basket.ts';
import { type PairNames, type PairRead, readPair } from './readPair.ts';

/** One pair of the basket as it stands. */
export interface PairStanding {
  readonly id: number;
  readonly names: PairNames;
  readonly standing: Standing;
  readonly notHad: readonly NotHad[];
  /** Index of its lines in the price. */
  readonly at: number;
}

export interface BasketAnswer {
  /** In the order of the basket; null where the shop no longer has the frame. */
  readonly pairs: readonly (PairStanding | null)[];
  /** null: nothing to price, or the terms have a fault. */
  readonly price: PriceAnswer | null;
  readonly faults: readonly FieldFault[];
  /** The whole answer that the price is of, for whoever makes an order of it; null where there is no price. */
  readonly whole: Answer | null;
  /** What was asked, for whoever makes an order of it; null where there is nothing to ask. */
  readonly request: QuoteRequest | null;
}

/** Frames of the shop by id; null: it has none of that id. */
export type FrameOf = (id: string) => Frame | null;

const NO_ROWS = { right: [], left: [] };

/** The basket on a civil date. */
export function answerBasket(basket: Basket, frameOf: FrameOf, data: ShopData, date: string): BasketAnswer {
  const reads = basket.pairs.map((pair) => {
    const frame = frameOf(pair.frame);
    return frame && { id: pair.id, frame, read: readPair(pair, frame, data, date) };
  });
  const whole = reads.filter((one) => one !== null);
  if (whole.length === 0)
    return { pairs: reads.map(() => null), price: null, whole: null, faults: [], request: null };
  const offer: Offer = { ...data, frames: [...new Set(whole.map(({ frame }) => frame))] };
  const pairs = whole.map(({ read }) => read.request);
  const request: QuoteRequest = { date, language: data.shop.language, ...orderTerms(basket.terms), pairs };
  const asked = quote(offer, request);
  // Terms without a price leave each pair its verdict.
  const judged = asked.ok ? asked : quote(offer, { date, pairs });
  if (!judged.ok) throw new Error(`The basket has no answer: ${JSON.stringify(judged.faults)}`);
  const stand = (one: (typeof whole)[number]): PairStanding => {
    const at = whole.indexOf(one);
    return { id: one.id, at, ...standing(one.read, judged.answer, judged.answer.pairs[at]) };
  };
  return {
    pairs: reads.map((one) => one && stand(one)),
    price: asked.ok ? asked.answer.price : null,
    whole: asked.ok ? asked.answer : null,
    faults: asked.ok ? [] : asked.faults.map((fault) => toFieldFault(data.words, fault, NO_ROWS)),
    request,
  };
}

function standing(
  { names, faults, notHad }: PairRead,
  answer: Answer,
  pair: PairAnswer | undefined,
): Pick<PairStanding, 'names' | 'notHad' | 'standing'> {
  if (pair === undefined) throw new RangeError('The answer lacks a pair of the basket.');
  return { names, notHad, standing: standingOf(faults, { ...answer, verdict: pair.verdict, pairs: [pair] }) };
}

/** Promotions in their declared order: which are used, what each takes off, and why the others are not used. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Promotion } from '../catalogue/promotion.ts';
import type { Charge, Slot, Wording } from './charge.ts';
import { cutOf } from './gift.ts';
import { type Goods, goodsTotal, without } from './goods.ts';
import type { PricedPair } from './pair.ts';
import { pairInScope } from './scope.ts';
import type { PriceWord } from './words.ts';

/** A promotion that needs no code, or whose code was typed. */
export interface Candidate {
  readonly promotion: Promotion;
  /** Why its dates rule it out; null: the day lies within them. */
  readonly outOfDate: Wording | null;
}

export interface Considered {
  readonly promotion: Promotion;
  readonly used: boolean;
  readonly why: Wording;
}

export interface Applied {
  readonly charges: readonly Charge[];
  readonly considered: readonly Considered[];
  /** What is left to pay, before tax. */
  readonly left: Goods;
}

const why = (key: PriceWord, slots: Record<string, Slot>): Wording => ({ key, slots });

/** Whether two promotions may be used in one order: each must accept the other. */
export function joins(one: Promotion, other: Promotion): boolean {
  const accepts = ({ joins: accepted }: Promotion, id: string): boolean =>
    accepted === 'all' || (accepted !== 'none' && accepted.includes(id));
  return accepts(one, other.id) && accepts(other, one.id);
}

function linesOf(promotion: Promotion, cut: Goods): Charge[] {
  const label = promotion.sentence;
  const source = `promotions/${promotion.id}`;
  const lines: Charge[] = [];
  cut.pairs.forEach(({ frame, lenses }, pair) => {
    const amountMinor = -(frame + lenses);
    if (amountMinor !== 0) lines.push({ kind: 'promotion', pair, label, amountMinor, source });
  });
  if (cut.shipping !== 0)
    lines.push({ kind: 'promotion', pair: null, label, amountMinor: -cut.shipping, source });
  return lines;
}

/** What keeps the promotion from this order, promotions already used apart; null: nothing. */
function obstacle(
  { promotion, outOfDate }: Candidate,
  goods: Goods,
  inScope: readonly boolean[],
): Wording | null {
  const { title, scope } = promotion;
  if (outOfDate) return outOfDate;
  if (!inScope.includes(true)) return why('price.why.out-of-scope', { title });
  if (inScope.length < scope.leastPairs)
    return why('price.why.least-pairs', { title, pairs: scope.leastPairs });
  const total = goodsTotal(goods);
  const least = scope.leastGoodsMinor;
  if (least === null || total >= least) return null;
  return why('price.why.least-goods', { title, least: { minor: least }, missing: { minor: least - total } });
}

function rivalry(promotion: Promotion, used: readonly Promotion[]): Wording | null {
  const rival = used.find((other) => !joins(promotion, other));
  return rival ? why('price.why.not-together', { title: promotion.title, other: rival.title }) : null;
}

/** One candidate tried on what is left. */
interface Tried {
  readonly promotion: Promotion;
  /** What kept it from the order; null: nothing did. */
  readonly refusal: Wording | null;
  /** What it takes off; null: nothing. */
  readonly cut: Goods | null;
}

const isEmpty = ({ pairs, shipping }: Goods): boolean =>
  shipping === 0 && pairs.every(({ frame, lenses }) => frame + lenses === 0);

/**
 * Tries the candidates in order, each once, and gives what is left to pay before tax. `goods` is the order at list
 * price with surcharges, before promotions: least sums are compared with it. A promotion with nothing to take off is
 * not used, and so keeps no other away.
 */
export function leftAfter(
  offer: Offer,
  candidates: readonly Candidate[],
  pairs: readonly PricedPair[],
  goods: Goods,
  tell?: (tried: Tried) => void,
): Goods {
  const accepted: Promotion[] = [];
  const chosen = pairs.map(({ lenses }) => lenses);
  let left = goods;
  for (const candidate of candidates) {
    const { promotion } = candidate;
    const inScope = pairs.map((pair) => pairInScope(promotion.scope, pair));
    const refusal = obstacle(candidate, goods, inScope) ?? rivalry(promotion, accepted);
    const most = refusal ? null : cutOf(offer, promotion.gift, left, inScope, chosen);
    const cut = most === null || isEmpty(most) ? null : most;
    if (cut) {
      left = without(left, cut);
      accepted.push(promotion);
    }
    tell?.({ promotion, refusal, cut });
  }
  return left;
}

/** What `leftAfter` leaves, with the lines of each promotion that is used and a reason for each. */
export function applyPromotions(
  offer: Offer,
  candidates: readonly Candidate[],
  pairs: readonly PricedPair[],
  goods: Goods,
): Applied {
  const charges: Charge[] = [];
  const considered: Considered[] = [];
  const left = leftAfter(offer, candidates, pairs, goods, ({ promotion, refusal, cut }) => {
    if (cut) charges.push(...linesOf(promotion, cut));
    const outcome = cut ? 'price.why.used' : 'price.why.nothing-left';
    const reason = refusal ?? why(outcome, { title: promotion.title });
    considered.push({ promotion, used: cut !== null, why: reason });
  });
  return { charges, considered, left };
}

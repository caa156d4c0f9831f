/** What a draft still lacks before it can be sent, as ids of sentences in the shop's words. */
import type { Answer } from '../quote/answer.ts';
import type { PairRequest } from '../quote/request.ts';
import type { OrderDraft, OrderingShop } from './makeOrder.ts';
import type { Measurer, OrderPair } from './order.ts';
import { plainText } from './text.ts';

/** In the order of the form. */
export const LACKS = [
  'gone',
  'price',
  'unread',
  'needs',
  'refused',
  'wearer',
  'issued',
  'prescriber',
  'measurer',
  'caution',
  'name',
  'address',
  'contact',
  'consent',
  'payment',
] as const;

/** One thing that is missing. */
export interface Lack {
  /** Sentence `order.missing.<code>`. */
  readonly code: (typeof LACKS)[number];
  /** Index of the pair, id of the consent, or name of the frame that is gone; null: the whole order. */
  readonly of: number | string | null;
}

/** A pair while its part of the form is filled in. */
export interface UnfinishedPair extends Omit<OrderPair, 'measuredBy'> {
  /** null: not said. */
  readonly measuredBy: Measurer | null;
  /** What its worksheet waits for: an entry that cannot be read, or one that is not there; null: nothing. */
  readonly waits: 'unread' | 'needs' | null;
}

/** A draft while the form is filled in. */
export interface Unfinished extends Omit<OrderDraft, 'pairs' | 'answer'> {
  readonly pairs: readonly UnfinishedPair[];
  /** null: the terms have no price. */
  readonly answer: Answer | null;
  /** Frames of pairs that the shop no longer has; these pairs are not in the request. */
  readonly gone: readonly string[];
}

/** Everything that a draft lacks, in the order of the form; empty when it can be sent. */
export function missingOf(
  { shop }: { readonly shop: Pick<OrderingShop, 'order'> },
  draft: Unfinished,
): readonly Lack[] {
  const { pairs, request, answer, gone } = draft;
  return [
    ...gone.map((frame): Lack => ({ code: 'gone', of: frame })),
    ...(answer === null && pairs.length > 0 ? [{ code: 'price', of: null } as const] : []),
    ...pairs.flatMap((pair, at) =>
      pairLacks(pair, { answer: answer?.pairs[at], request: request.pairs[at] }, at),
    ),
    ...wholeLacks(shop.order, draft),
  ];
}

const isBlank = (text: string) => plainText(text) === '';

interface Asked {
  readonly answer: Answer['pairs'][number] | undefined;
  readonly request: PairRequest | undefined;
}

function pairLacks(pair: UnfinishedPair, { answer, request }: Asked, at: number): Lack[] {
  const { waits, wearer, prescription: paper, measuredBy, confirmed } = pair;
  const cautions = (answer?.findings ?? []).filter(({ level }) => level === 'caution');
  const lacks: readonly (readonly [Lack['code'], boolean])[] = [
    ['unread', waits === 'unread'],
    ['needs', waits === 'needs'],
    // Until all is entered, a refusal only says so.
    ['refused', waits === null && answer?.verdict === 'refused'],
    ['wearer', isBlank(wearer)],
    // A date that cannot be read is told of already.
    ['issued', paper !== null && waits !== 'unread' && request?.prescription?.issued === undefined],
    // A picture shows who prescribed.
    ['prescriber', paper !== null && isBlank(paper.prescriber.name) && paper.attachments.length === 0],
    ['measurer', measuredBy === null],
    ['caution', cautions.some(({ rule }) => !confirmed.includes(rule))],
  ];
  return lacks.flatMap(([code, open]) => (open ? [{ code, of: at }] : []));
}

function wholeLacks({ consents, payments }: OrderingShop['order'], draft: Unfinished): Lack[] {
  const { buyer, accepted, payment } = draft;
  const lacks: readonly (readonly [Lack['code'], boolean])[] = [
    ['name', isBlank(buyer.name)],
    ['address', buyer.lines.every(isBlank)],
    ['contact', isBlank(buyer.email) && isBlank(buyer.phone)],
  ];
  return [
    ...lacks.flatMap(([code, open]): Lack[] => (open ? [{ code, of: null }] : [])),
    ...consents.flatMap(({ id }): Lack[] => (accepted.includes(id) ? [] : [{ code: 'consent', of: id }])),
    ...(payments.length > 0 && !payments.some(({ id }) => id === payment)
      ? [{ code: 'payment', of: null } as const]
      : []),
  ];
}

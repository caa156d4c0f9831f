/** What a draft still lacks before it can be sent, as ids of sentences in the shop's words. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { OrderDraft } from './makeOrder.ts';
import { plainText } from './text.ts';

export const LACKS = [
  'name',
  'address',
  'contact',
  'wearer',
  'caution',
  'consent',
  'payment',
  'refused',
] as const;

/** One thing that is missing. */
export interface Lack {
  /** Sentence `order.missing.<code>`. */
  readonly code: (typeof LACKS)[number];
  /** Index of the pair, or id of the consent, that it is about; null: the whole order. */
  readonly of: number | string | null;
}

/** Everything that a draft lacks, in the order of the form; empty when it can be sent. */
export function missingOf({ shop }: Pick<Offer, 'shop'>, draft: OrderDraft): readonly Lack[] {
  const { buyer, pairs, accepted, payment, answer } = draft;
  const { consents, payments } = shop.order;
  const blank = (text: string) => plainText(text) === '';
  const lacks: Lack[] = [];
  const lack = (code: Lack['code'], of: Lack['of'] = null) => lacks.push({ code, of });
  if (blank(buyer.name)) lack('name');
  if (buyer.lines.every(blank)) lack('address');
  if (blank(buyer.email) && blank(buyer.phone)) lack('contact');
  for (const [at, { wearer }] of pairs.entries()) if (blank(wearer)) lack('wearer', at);
  for (const [at, { findings }] of answer.pairs.entries()) {
    const open = findings.filter(
      ({ level, rule }) => level === 'caution' && !pairs[at]?.confirmed.includes(rule),
    );
    if (open.length > 0) lack('caution', at);
  }
  for (const { id } of consents) if (!accepted.includes(id)) lack('consent', id);
  if (payments.length > 0 && !payments.some(({ id }) => id === payment)) lack('payment');
  if (answer.verdict === 'refused') lack('refused');
  return lacks;
}

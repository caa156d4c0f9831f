/** The draft of an order from what was typed and ticked, and from the answered basket. */
import type { Words } from '../../catalogue/catalogue.ts';
import type { Answered } from '../basket/basketStores.ts';
import { cautionsOf, gonePairs, isMeasured, type OrderedPair, orderedPairs } from './orderedPairs.ts';
import type { Attachment, Measurer, OrderDraft, OrderingShop, OrderParts, Unfinished } from './orderParts.ts';
import { cautionField, consentField, ofPair, type PairField, type Typed, textIn } from './typed.ts';
import { addressLines, readBaseCurve } from './typedFaults.ts';

/** Files by the number of their pair in the basket. */
export type Files = Readonly<Record<number, readonly Attachment[]>>;

/** What the form offers for who measured. */
export const MEASURED_BY = [
  'buyer',
  'shop',
  'prescriber',
  'optician',
  'nobody',
] as const satisfies readonly Measurer[];

export interface FilledIn {
  readonly parts: OrderParts;
  readonly shop: OrderingShop;
  readonly shopVersion: string;
  readonly words: Words;
  readonly number: string;
  readonly typed: Typed;
  readonly files: Files;
  readonly answered: Answered;
}

/** The draft as far as it has come; null where nothing can be asked for: the shop has no frame of the basket. */
export function draftOf(form: FilledIn): Unfinished | null {
  const { shop, shopVersion, number, typed, answered } = form;
  const { request, whole } = answered.answer;
  if (request === null) return null;
  return {
    number,
    shopVersion,
    buyer: {
      name: textIn(typed, 'name'),
      lines: addressLines(typed),
      email: textIn(typed, 'email'),
      phone: textIn(typed, 'phone'),
    },
    request,
    pairs: orderedPairs(answered).map((pair) => pairOf(form, pair)),
    answer: whole,
    gone: gonePairs(answered).map(({ frame }) => frame),
    // The tick holds the words that it stood beside: others were never accepted.
    accepted: shop.order.consents
      .filter(({ id, text }) => textIn(typed, consentField(id)) === text)
      .map(({ id }) => id),
    payment: paymentOf(shop, typed),
    notes: textIn(typed, 'notes'),
  };
}

/** The way to pay that was chosen; the only one of a shop needs no choice. */
export function paymentOf({ order: { payments } }: OrderingShop, typed: Typed): string | null {
  const [first, ...others] = payments;
  return others.length === 0 ? (first?.id ?? null) : textIn(typed, 'payment') || null;
}

function pairOf(
  { parts, words, typed, files }: FilledIn,
  { id, standing, request }: OrderedPair,
): Unfinished['pairs'][number] {
  const text = (field: PairField) => textIn(typed, ofPair(id, field));
  const { kind } = standing.standing;
  return {
    wearer: text('wearer'),
    prescription: request.prescription && {
      written: text('written'),
      prescriber: { name: text('prescriber'), place: text('place') },
      attachments: files[id] ?? [],
    },
    measuredBy: isMeasured(request)
      ? (MEASURED_BY.find((one) => one === text('measuredBy')) ?? null)
      : 'nobody',
    measuredNote: text('measuredNote'),
    confirmed: cautionsOf(words, standing)
      .filter(({ rule, text: told }) => textIn(typed, cautionField(id, rule)) === told)
      .map(({ rule }) => rule),
    wornBaseCurveD: readBaseCurve(parts, text('baseCurve')),
    waits: kind === 'mend' ? 'unread' : kind === 'needs' ? 'needs' : null,
  };
}

/** A draft that lacks nothing; null where it does. */
export function wholeDraft({ answer, pairs, gone: _, ...rest }: Unfinished): OrderDraft | null {
  const told = pairs.flatMap(({ measuredBy, waits: _waits, ...pair }) =>
    measuredBy === null ? [] : [{ ...pair, measuredBy }],
  );
  return answer === null || told.length < pairs.length ? null : { ...rest, answer, pairs: told };
}

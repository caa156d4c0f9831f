/** What is still missing or wrong, each with the field that it leads to. */
import type { Words } from '../../catalogue/catalogue.ts';
import type { Slots } from '../../catalogue/words.ts';
import type { Answered } from '../basket/basketStores.ts';
import { cautionsOf, gonePairs, orderedPairs } from './orderedPairs.ts';
import type { Lack, OrderingShop } from './orderParts.ts';
import { cautionField, consentField, ofPair, type Typed, textIn } from './typed.ts';
import type { TypedFault } from './typedFaults.ts';

export interface OpenItem {
  /** Name of the field, or of the part of the form. */
  readonly field: string;
  /** Whole key of its sentence. */
  readonly key: string;
  readonly slots: Slots;
  /** Place of its pair in the basket, from 1; null: the whole order. */
  readonly pair: number | null;
}

/** Name of the part of the form that a pair has. */
export const pairPart = (id: number): string => `pair.${id}`;

const OF_THE_ORDER: Readonly<Partial<Record<Lack['code'], string>>> = {
  contact: 'email',
  price: 'price',
  payment: 'payment',
};

/** Faults in what was typed, then what is missing, as places of the form. */
export function openItems(
  { shop, words }: { readonly shop: Pick<OrderingShop, 'order'>; readonly words: Words },
  answered: Answered,
  typed: Typed,
  faults: readonly TypedFault[],
  lacks: readonly Lack[],
): readonly OpenItem[] {
  const pairs = orderedPairs(answered);
  const gone = gonePairs(answered);
  const faulty = faults.map(({ field, code, slots }): OpenItem => {
    const id = Number(/^pair\.(\d+)\./.exec(field)?.[1] ?? 0);
    const pair = pairs.find((one) => one.id === id)?.number ?? null;
    return { field, key: `orderPage.fault.${code}`, slots, pair };
  });
  const unconfirmed = (at: number) => {
    const pair = pairs[at];
    if (pair === undefined) return 'price';
    const open = cautionsOf(words, pair.standing).find(
      ({ rule, text }) => textIn(typed, cautionField(pair.id, rule)) !== text,
    );
    return open === undefined ? pairPart(pair.id) : cautionField(pair.id, open.rule);
  };
  const placeOf = ({ code, of }: Lack): Pick<OpenItem, 'field' | 'pair'> => {
    if (code === 'gone') {
      const pair = gone.find(({ frame }) => frame === of);
      return { field: pairPart(pair?.id ?? 0), pair: pair?.number ?? null };
    }
    if (typeof of === 'string') return { field: consentField(of), pair: null };
    if (of === null) return { field: OF_THE_ORDER[code] ?? code, pair: null };
    const pair = pairs[of];
    const { id = 0, number = null } = pair ?? {};
    if (code === 'wearer' || code === 'issued' || code === 'prescriber')
      return { field: ofPair(id, code), pair: number };
    if (code === 'measurer') return { field: ofPair(id, 'measuredBy'), pair: number };
    return { field: code === 'caution' ? unconfirmed(of) : pairPart(id), pair: number };
  };
  const sentence = ({ code, of }: Lack): Pick<OpenItem, 'key' | 'slots'> => {
    const consent = shop.order.consents.find(({ id }) => code === 'consent' && id === of);
    return consent === undefined
      ? { key: `order.missing.${code}`, slots: code === 'gone' ? { frame: String(of) } : {} }
      : { key: 'orderPage.consentMissing', slots: { text: beginningOf(consent.text) } };
  };
  return [...faulty, ...lacks.map((lack) => ({ ...placeOf(lack), ...sentence(lack) }))];
}

/** The first words of a text, enough to know it by. */
function beginningOf(text: string): string {
  const [line = ''] = /^.{0,60}(?=\s|$)/.exec(text) ?? [text.slice(0, 60)];
  return line.length < text.length ? `${line}…` : line;
}

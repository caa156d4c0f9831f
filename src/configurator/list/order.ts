/** In which order the frames of a list stand. */
import type { FrameAnswer } from '../../quote/frameList.ts';
import type { FrameFacts } from './facts.ts';

export const ORDERS = ['shop', 'price', 'edge', 'width', 'name'] as const;
/** `shop`: as the shop groups them. */
export type Order = (typeof ORDERS)[number];

export type Answers = ReadonlyMap<string, FrameAnswer>;

/**
 * The frames sorted, least first; what has no such figure comes last, and equal ones stay in the shop's order. By what
 * a prescription makes of them, frames of the wearer's own kind come before the others: a child's frame has the
 * thinnest edge of all, and is no choice for an adult.
 */
export function sorted(
  all: readonly FrameFacts[],
  answers: Answers,
  order: Order,
  language: string,
  wearer: FrameFacts['wearer'] = 'adult',
): readonly FrameFacts[] {
  if (order === 'shop') return all;
  if (order === 'name') {
    const { compare } = new Intl.Collator(language);
    return all.toSorted((one, other) => compare(one.name, other.name));
  }
  const keys = new Map(all.map((facts) => [facts.id, keyOf(facts, answers, order)]));
  const key = ({ id }: FrameFacts) => keys.get(id) ?? Number.POSITIVE_INFINITY;
  const judged = answers.size > 0 && order !== 'width';
  const strange = (facts: FrameFacts) => Number(facts.wearer !== wearer);
  const none = (facts: FrameFacts) => Number(key(facts) === Number.POSITIVE_INFINITY);
  return all.toSorted((one, other) => {
    const last = none(one) - none(other) || (judged ? strange(one) - strange(other) : 0);
    // A difference of infinities is no number.
    return last || (key(one) === key(other) ? 0 : key(one) - key(other));
  });
}

function keyOf(facts: FrameFacts, answers: Answers, order: 'price' | 'edge' | 'width'): number | null {
  if (order === 'width') return facts.widthsMm[0] ?? null;
  const answer = answers.get(facts.id);
  const made = answer !== undefined && answer.verdict !== 'refused';
  if (order === 'edge') return made ? answer.thickestMm : null;
  return answers.size === 0 ? facts.priceMinor : made ? answer.totalMinor : null;
}

/** The pairs of an answered basket as an order takes them, with the cautions that are confirmed of each. */
import type { Words } from '../../catalogue/catalogue.ts';
import type { PairRequest } from '../../quote/request.ts';
import type { PairStanding } from '../basket/answerBasket.ts';
import type { Answered } from '../basket/basketStores.ts';
import { foldEyes } from '../foldEyes.ts';

/** A pair that the shop has the frame of. */
export interface OrderedPair {
  /** Its number in the basket, never given twice. */
  readonly id: number;
  /** Its place in the basket, from 1. */
  readonly number: number;
  /** Where its page is. */
  readonly frame: string;
  readonly standing: PairStanding;
  readonly request: PairRequest;
}

/** The pairs in the order of the request; a pair whose frame is gone is left out. */
export function orderedPairs({ basket, answer }: Answered): readonly OrderedPair[] {
  return basket.pairs.flatMap(({ id, frame }, index) => {
    const standing = answer.pairs[index] ?? null;
    if (standing === null) return [];
    const request = answer.request?.pairs[standing.at];
    if (request === undefined) throw new RangeError('The answer lacks a pair of the basket.');
    return [{ id, number: index + 1, frame, standing, request }];
  });
}

/** Whether anything of the pair is measured: a pair without power may do without. */
export const isMeasured = ({ prescription, fit }: PairRequest): boolean =>
  prescription !== null || Object.keys(fit ?? {}).length > 0;

/** A pair whose frame the shop no longer has. */
export interface GonePair {
  readonly id: number;
  readonly number: number;
  readonly frame: string;
}

/** The pairs that an order cannot take at all. */
export const gonePairs = ({ basket, answer }: Answered): readonly GonePair[] =>
  basket.pairs.flatMap(({ id, frame }, index) =>
    answer.pairs[index] === null ? [{ id, number: index + 1, frame }] : [],
  );

/** A caution of a pair as it is confirmed: all that one rule says, in one text. */
export interface Caution {
  readonly rule: string;
  readonly text: string;
}

/** The cautions of a pair, one for each rule. */
export function cautionsOf(words: Words, { standing }: PairStanding): readonly Caution[] {
  const told = foldEyes(
    words,
    standing.findings.filter(({ level }) => level === 'caution'),
  );
  const rules = [...new Set(told.map(({ rule }) => rule))];
  return rules.map((rule) => ({
    rule,
    text: told
      .filter((one) => one.rule === rule)
      .map(({ message }) => message)
      .join(' '),
  }));
}

/** The stores of the basket's page: what is in it, and what the engine answered. */
import { atom, computed, map } from 'nanostores';
import type { Field } from '../fields.ts';
import { drop, hold, look, type Shelves } from '../keeping/holding.ts';
import type { BasketAnswer } from './answerBasket.ts';
import { BASKET, type Basket, copyForAnother, enter, NO_BASKET, remove } from './basket.ts';

/** The basket as it was asked about, with its answer: a newer one may be on its way. */
export interface Answered {
  readonly basket: Basket;
  readonly answer: BasketAnswer;
}

export interface BasketSource {
  readonly shelves: Shelves;
  /** null: the engine failed. */
  readonly ask: (question: {
    readonly basket: Basket;
    readonly date: string;
  }) => Promise<BasketAnswer | null>;
  /** Civil date in the shop's zone. */
  readonly date: string;
}

export type BasketStores = ReturnType<typeof createBasket>;

/** The stores of a basket; what cannot be read is dropped, and `damaged` says so. */
export function createBasket({ shelves, ask, date }: BasketSource) {
  const first = look(shelves, BASKET);
  if (first.damaged) drop(shelves, BASKET);
  const basket = atom<Basket>(first.value ?? NO_BASKET);
  const terms = map<Partial<Record<Field, string>>>({ ...basket.get().terms });
  basket.listen((now) => terms.set({ ...now.terms }));
  const onDevice = atom(first.onDevice);
  const answered = atom<Answered | null>(null);
  const failed = atom(false);
  const refused = atom(false);
  let asked = 0;
  const judge = async () => {
    const now = basket.get();
    asked += 1;
    const mine = asked;
    if (now.pairs.length === 0) return answered.set(null);
    const answer = await ask({ basket: now, date });
    if (mine !== asked) return;
    failed.set(answer === null);
    if (answer !== null) answered.set({ basket: now, answer });
  };
  // Held before it is shown: whoever counts what is held counts the new one.
  const holdAs = (next: Basket, kept: boolean) => {
    const done = hold(shelves, BASKET, next, kept);
    refused.set(!done);
    return done;
  };
  const change = (next: Basket) => {
    holdAs(next, onDevice.get());
    basket.set(next);
    void judge();
  };
  return {
    basket,
    onDevice,
    answered,
    /** The engine did not answer. */
    failed,
    /** The browser refuses to hold it. */
    refused,
    damaged: first.damaged,
    judge,
    remove: (id: number) => change(remove(basket.get(), id)),
    /** The number of the copy in the list, from 1; null where the basket is full. */
    copy: (id: number): number | null => {
      const next = copyForAnother(basket.get(), id);
      if (next === null) return null;
      change(next);
      return next.pairs.length;
    },
    keep: (on: boolean) => {
      if (holdAs(basket.get(), on)) onDevice.set(on);
    },
    /** Empties it without holding anything: what was held is forgotten elsewhere. */
    clear: () => {
      basket.set(NO_BASKET);
      onDevice.set(false);
      void judge();
    },
    /** Reads it again where another tab has changed it. */
    refresh: () => {
      const now = look(shelves, BASKET);
      basket.set(now.value ?? NO_BASKET);
      onDevice.set(now.onDevice);
      void judge();
    },
    /** An entry of one pair. */
    enter: (id: number, field: Field, text: string) => change(enter(basket.get(), id, field, text)),
    enterTerm: (field: Field, text: string) => {
      const now = basket.get();
      change({ ...now, terms: { ...now.terms, [field]: text } });
    },
    /** Destination, exemption and codes of the order. */
    terms,
    faults: computed(answered, (now) => now?.answer.faults ?? []),
  };
}

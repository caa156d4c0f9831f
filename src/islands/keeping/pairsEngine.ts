/** The engine for several pairs, in its thread: a question in, a promise of its answer out. */
import type { BasketAnswer } from '../../configurator/basket/answerBasket.ts';
import type { Comparison } from '../../configurator/basket/answerComparison.ts';
import type { PairsAsked, PairsQuestion, PairsTold } from '../../configurator/basket/pairsWorker.ts';

type Question<K> = Extract<PairsQuestion, { readonly kind: K }>;

export interface PairsEngine {
  /** null: it failed. */
  readonly basket: (question: Omit<Question<'basket'>, 'kind'>) => Promise<BasketAnswer | null>;
  readonly comparison: (question: Omit<Question<'comparison'>, 'kind'>) => Promise<Comparison | null>;
}

/** Starts the thread; `shop` is the address of the shop's data. */
export function startPairsEngine(shop: string): PairsEngine {
  const worker = new Worker(new URL('../../configurator/basket/pairsWorker.ts', import.meta.url), {
    type: 'module',
  });
  const send = (asked: PairsAsked) => worker.postMessage(asked);
  const waiting = new Map<number, (answer: PairsTold['answer']) => void>();
  let serial = 0;
  worker.addEventListener('message', ({ data }: MessageEvent<PairsTold>) => {
    waiting.get(data.serial)?.(data.answer);
    waiting.delete(data.serial);
  });
  worker.addEventListener('error', () => {
    for (const settle of waiting.values()) settle(null);
    waiting.clear();
  });
  send({ shop });
  const ask = (question: PairsQuestion) =>
    new Promise<PairsTold['answer']>((settle) => {
      serial += 1;
      waiting.set(serial, settle);
      send({ serial, question });
    });
  return {
    // A question's kind decides the kind of its answer.
    basket: (question) => ask({ kind: 'basket', ...question }) as Promise<BasketAnswer | null>,
    comparison: (question) => ask({ kind: 'comparison', ...question }) as Promise<Comparison | null>,
  };
}

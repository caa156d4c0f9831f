/**
 * The engine for several pairs, in a thread of its own. The first message says where the shop's data lies; of the
 * frames it loads only those that are asked about.
 */

import type { Frame } from '../../catalogue/frame.ts';
import { pageHref } from '../../catalogue/languages.ts';
import { siteHref } from '../../catalogue/siteHref.ts';
import { OWN_FRAME } from '../entry/ownFrame.ts';
import type { Entries } from '../fields.ts';
import type { HeldPair } from '../keeping/parts.ts';
import type { ShopData } from '../shopData.ts';
import type { BasketAnswer } from './answerBasket.ts';
import type { Comparison } from './answerComparison.ts';
import type { Basket } from './basket.ts';

/** What is asked, on a civil date. */
export type PairsQuestion = { readonly date: string } & (
  | { readonly kind: 'basket'; readonly basket: Basket }
  | { readonly kind: 'comparison'; readonly pairs: readonly HeldPair[]; readonly terms: Entries }
);

/** What the page sends. */
export type PairsAsked =
  | { readonly shop: string }
  | { readonly serial: number; readonly question: PairsQuestion };

/** What comes back. */
export interface PairsTold {
  readonly serial: number;
  /** null: the data could not be loaded, or the engine failed. */
  readonly answer: BasketAnswer | Comparison | null;
}

// Named beside each other, rules and prices are built as parts of their own and load side by side.
const parts = Promise.all([
  import('./answerBasket.ts'),
  import('./answerComparison.ts'),
  import('../../rules/rules.ts'),
  import('../../pricing/priceOrder.ts'),
]);

let shop: Promise<ShopData> | null = null;
const frames = new Map<string, Promise<Frame | null>>();

async function read<T>(address: string): Promise<T | null> {
  // Its name stays while its content changes, so that it has to be asked whether it has.
  const response = await fetch(address, { cache: 'no-cache' });
  if (response.status === 404) return null;
  if (!response.ok) throw new Error(`The data at ${address} answered ${response.status}.`);
  return response.json();
}

async function frameNamed(id: string): Promise<Frame | null> {
  if (id === OWN_FRAME.id) return OWN_FRAME;
  const data = await shop;
  if (data === null) throw new Error("The shop's data was not named.");
  const found = frames.get(id) ?? read<Frame>(siteHref(pageHref(data.shop, `/frames/${id}/data.json`)));
  frames.set(id, found);
  // One that failed is asked for again the next time.
  found.catch(() => frames.delete(id));
  return found;
}

async function answer(question: PairsQuestion): Promise<BasketAnswer | Comparison> {
  const pairs = question.kind === 'basket' ? question.basket.pairs : question.pairs;
  const [[{ answerBasket }, { answerComparison }], data, ...found] = await Promise.all([
    parts,
    shop,
    ...pairs.map(({ frame }) => frameNamed(frame)),
  ]);
  if (data === null) throw new Error("The shop's data was not named.");
  const known = new Map(pairs.map(({ frame }, at) => [frame, found[at] ?? null]));
  const frameOf = (id: string) => known.get(id) ?? null;
  return question.kind === 'basket'
    ? answerBasket(question.basket, frameOf, data, question.date)
    : answerComparison(question.pairs, question.terms, frameOf, data, question.date);
}

async function load(address: string): Promise<ShopData> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`The shop's data answered ${response.status}.`);
  return response.json();
}

async function hear(asked: PairsAsked): Promise<void> {
  if ('shop' in asked) {
    shop = load(asked.shop);
    shop.catch(() => undefined);
    return;
  }
  const { serial, question } = asked;
  try {
    const told: PairsTold = { serial, answer: await answer(question) };
    postMessage(told);
  } catch (error) {
    reportError(error);
    postMessage({ serial, answer: null } satisfies PairsTold);
  }
}

addEventListener('message', ({ data }: MessageEvent<PairsAsked>) => void hear(data));

/** The engine in a thread of its own, so that typing never waits for it. The first message is the offer. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { QuoteRequest } from '../quote/request.ts';

/** What the page sends. */
export type Asked = { readonly offer: Offer } | { readonly serial: number; readonly request: QuoteRequest };

// Named beside the engine, rules and prices are built as parts of their own: side by side they load sooner, and
// each keeps within the weight that README promises of a part.
const parts = Promise.all([
  import('./answering.ts'),
  import('../rules/rules.ts'),
  import('../pricing/priceOrder.ts'),
]);

let answer: Promise<ReturnType<typeof import('./answering.ts').answerer>> | null = null;

async function hear(asked: Asked): Promise<void> {
  if ('offer' in asked)
    answer = parts.then(([{ answerer }]) => answerer(asked.offer, (told) => postMessage(told)));
  else await (await answer)?.(asked.serial, asked.request);
}

// The page hears of a failure only as an error, not as a promise that nobody waits for.
addEventListener('message', ({ data }: MessageEvent<Asked>) => void hear(data).catch(reportError));

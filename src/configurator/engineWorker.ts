/** The engine in a thread of its own, so that typing never waits for it. The first message is the offer. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { QuoteRequest } from '../quote/request.ts';
import { answerer } from './answering.ts';

/** What the page sends. */
export type Asked = { readonly offer: Offer } | { readonly serial: number; readonly request: QuoteRequest };

let answer: ReturnType<typeof answerer> | null = null;

addEventListener('message', ({ data }: MessageEvent<Asked>) => {
  if ('offer' in data) answer = answerer(data.offer, (told) => postMessage(told));
  else answer?.(data.serial, data.request);
});

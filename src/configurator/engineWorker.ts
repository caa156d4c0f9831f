/** The engine in a thread of its own, so that typing never waits for it. The first message is the offer. */
import type { Offer } from '../catalogue/catalogue.ts';
import type { Frame } from '../catalogue/frame.ts';
import type { QuoteRequest } from '../quote/request.ts';
import type { Compared } from './drawn.ts';
import { type PackedFrame, unpackFrame } from './framePack.ts';

/** What the page sends. */
export type Asked =
  /** `frames` is where all frames that might be advised lie. */
  | { readonly offer: Offer; readonly frames: string }
  | { readonly serial: number; readonly request: QuoteRequest }
  | { readonly compared: Compared | null };

// Named beside the engine, rules and prices are built as parts of their own: side by side they load sooner, and
// each keeps within the weight that README promises of a part.
const parts = Promise.all([
  import('./answering.ts'),
  import('../rules/rules.ts'),
  import('../pricing/priceOrder.ts'),
]);

let engine: Promise<ReturnType<typeof import('./answering.ts').answerer>> | null = null;

/** Loads all frames the first time that advice is wanted; tries again where that failed. */
function framesFrom(address: string): () => Promise<readonly Frame[]> {
  let loaded: Promise<readonly Frame[]> | null = null;
  return () => {
    loaded ??= fetch(address)
      .then((response) => {
        if (!response.ok) throw new Error(`The frames answered ${response.status}.`);
        return response.json();
      })
      .then((packed: readonly PackedFrame[]) => packed.map(unpackFrame))
      .catch((error) => {
        loaded = null;
        throw error;
      });
    return loaded;
  };
}

async function hear(asked: Asked): Promise<void> {
  if ('offer' in asked)
    engine = parts.then(([{ answerer }]) =>
      answerer(asked.offer, (told) => postMessage(told), { frames: framesFrom(asked.frames) }),
    );
  else if ('compared' in asked) await (await engine)?.draw(asked.compared);
  else await (await engine)?.ask(asked.serial, asked.request);
}

// The page hears of a failure only as an error, not as a promise that nobody waits for.
addEventListener('message', ({ data }: MessageEvent<Asked>) => void hear(data).catch(reportError));

/** The list's engine in a thread of its own. The first message says where its data lies; it loads them itself. */
import type { ListRequest } from '../../quote/frameListRequest.ts';
import type { Limits } from './filters.ts';

/** What the page sends. */
export type ListAsked =
  | { readonly shop: string; readonly frames: string }
  | { readonly serial: number; readonly request: ListRequest; readonly limits: Limits };

// Named beside each other, rules and prices are built as parts of their own and load side by side.
const parts = Promise.all([
  import('./answerList.ts'),
  import('../../rules/rules.ts'),
  import('../../pricing/priceOrder.ts'),
]);

let answer: Promise<ReturnType<typeof import('./answerList.ts').listAnswerer>> | null = null;

async function read(address: string) {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`The data at ${address} answered ${response.status}.`);
  return response.json();
}

let asked = false;

async function load(addresses: { readonly shop: string; readonly frames: string }) {
  const [[{ listAnswerer, warmUp }], shop, frames] = await Promise.all([
    parts,
    read(addresses.shop),
    read(addresses.frames),
  ]);
  void warmUp(shop, frames, () => asked).catch(reportError);
  return listAnswerer(shop, frames, (told) => postMessage(told));
}

async function hear(message: ListAsked): Promise<void> {
  if ('shop' in message) {
    answer = load(message);
    await answer;
    return;
  }
  asked = true;
  await (await answer)?.(message.serial, message.request, message.limits);
}

// The page hears of a failure only as an error, not as a promise that nobody waits for.
addEventListener('message', ({ data }: MessageEvent<ListAsked>) => void hear(data).catch(reportError));

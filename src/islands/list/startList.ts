/** Brings the list's form to life: stores from what the page holds, what was kept and what was typed meanwhile. */
import '../linksUnderBase.ts';
import { h, hydrate } from 'preact';
import type { Words } from '../../catalogue/catalogue.ts';
import { civilDateAt } from '../../catalogue/civilDate.ts';
import type { Shop } from '../../catalogue/shop.ts';
import { siteHref } from '../../catalogue/siteHref.ts';
import type { Entries } from '../../configurator/fields.ts';
import { keep, recall } from '../../configurator/keeping.ts';
import { consultList, type ListEngine } from '../../configurator/list/consultList.ts';
import type { FrameFacts } from '../../configurator/list/facts.ts';
import { createFrameList, type FrameListStores } from '../../configurator/list/frameList.ts';
import type { ListAsked } from '../../configurator/list/listWorker.ts';
import { deviceShelf } from '../deviceShelf.ts';
import { tickedEarly } from '../tickedEarly.ts';
import { typedIn } from '../typedIn.ts';
import { keepCards } from './cards.ts';
import { carryToFrame } from './carryToFrame.ts';
import { ListForm } from './ListForm.tsx';
import { NO_FRAME } from './ListKeeping.tsx';

/** What the list's page holds beside the form. */
export interface ListPageData {
  readonly shop: Shop;
  readonly words: Words;
  readonly facts: readonly FrameFacts[];
  /** Addresses of what the engine loads. */
  readonly data: { readonly shop: string; readonly frames: string };
}

/** Hydrates the form in `root`. */
export function startList(root: HTMLElement, { shop, words, facts, data }: ListPageData): void {
  const kept = recall(deviceShelf(), NO_FRAME);
  const typed = typedIn(root);
  const tickAgain = tickedEarly(root);
  const picked = [...root.querySelectorAll('select')].filter(
    ({ value, options }) => value !== (options[0]?.value ?? ''),
  );
  const values = picked.map(({ value }) => value);
  const stores = createFrameList({ shop, words, facts, date: civilDateAt(Date.now(), shop.timeZone) });
  // The static form holds no entries, so its first rendering here has none either.
  hydrate(h(ListForm, { stores }), root);
  keepCards(stores, document);
  carryToFrame(stores);
  // What was sorted or filtered by before the script was there is chosen again, now that somebody listens.
  picked.forEach((select, at) => {
    select.value = values[at] ?? '';
    select.dispatchEvent(new Event('change', { bubbles: true }));
  });
  stores.fill({ ...kept, ...typed });
  stores.kept.set(kept !== null);
  stores.entries.listen((now) => {
    if (stores.kept.get()) keep(deviceShelf(), NO_FRAME, now);
  });
  tickAgain();
  if (kept !== null) root.querySelector('details')?.setAttribute('open', '');
  beginWhenUsed(stores, data);
}

/** The engine and its data are loaded with the first entry, so that they are there when the last one is made. */
function beginWhenUsed(stores: FrameListStores, data: ListPageData['data']): void {
  const begin = (entries: Entries) => {
    if (Object.keys(entries).length === 0) return;
    queueMicrotask(() => stop());
    consultList(stores, engineFor(stores, data));
  };
  const stop = stores.entries.subscribe(begin);
}

function engineFor(stores: FrameListStores, data: ListPageData['data']): ListEngine {
  const worker = new Worker(new URL('../../configurator/list/listWorker.ts', import.meta.url), {
    type: 'module',
  });
  const send = (asked: ListAsked) => worker.postMessage(asked);
  worker.addEventListener('error', () => stores.progress.set('failed'));
  send({ shop: siteHref(data.shop), frames: siteHref(data.frames) });
  return {
    ask: send,
    listen: (heard) => worker.addEventListener('message', ({ data: told }) => heard(told)),
  };
}

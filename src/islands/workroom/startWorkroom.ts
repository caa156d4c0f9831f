/** Brings the workroom's page to life. */
import '../linksUnderBase.ts';
import { h, render } from 'preact';
import { civilDateAt } from '../../catalogue/civilDate.ts';
import { siteHref } from '../../catalogue/siteHref.ts';
import { say } from '../../catalogue/words.ts';
import type { WorkroomOffer } from '../../workroom/openJob.ts';
import { createBench } from './bench.ts';
import { loadOrders } from './orders.ts';
import { deviceShelf } from './shelf.ts';
import { Workroom } from './Workroom.tsx';

interface PageData {
  readonly offer: WorkroomOffer;
  readonly version: string;
}

async function start(root: HTMLElement): Promise<void> {
  const { offer, version } = JSON.parse(
    document.getElementById('workroom-data')?.textContent ?? '',
  ) as PageData;
  const bench = createBench({
    ...{ offer, version, shelf: deviceShelf },
    orders: await loadOrders(),
    today: () => civilDateAt(Date.now(), offer.shop.timeZone),
    t: (key, slots) => say(offer.words, `workroomPage.${key}`, slots),
  });
  render(h(Workroom, { bench }), root);
  await bench.recall();
  // Another tab may have noted a step, or deleted all.
  document.addEventListener('visibilitychange', () => {
    if (!document.hidden && bench.keeping.get()) void bench.recall();
  });
  addEventListener('storage', () => bench.keeping.set(deviceShelf.isWanted()));
  // Open orders and measurements live in this page alone.
  addEventListener('beforeunload', (event) => {
    const typed = Object.keys(bench.drafts.get());
    if (typed.some((id) => !bench.keeping.get() || !bench.notes.get().has(id))) event.preventDefault();
  });
}

/** The page without a network: its own worker serves this page and nothing else of the shop. */
async function offline(told: HTMLElement | null): Promise<void> {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  await navigator.serviceWorker.register(siteHref('/workroom/worker.js'), { scope: siteHref('/workroom/') });
  await navigator.serviceWorker.ready;
  if (told !== null) told.hidden = false;
}

const root = document.getElementById('workroom-root');
const failed = document.getElementById('workroom-failed');
if (root !== null)
  start(root).catch(() => {
    if (failed !== null) failed.hidden = false;
  });
// A browser that refuses the worker still has the page as long as it is open.
offline(document.getElementById('workroom-offline')).catch(() => undefined);

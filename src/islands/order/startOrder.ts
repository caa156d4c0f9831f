/** Brings the order page to life. */
import '../linksUnderBase.ts';
import { h, render } from 'preact';
import type { Words } from '../../catalogue/catalogue.ts';
import { civilDateAt } from '../../catalogue/civilDate.ts';
import { loadOrderParts } from '../../configurator/order/orderParts.ts';
import { createOrder } from '../../configurator/order/orderStores.ts';
import { askBeforeLeaving } from '../askBeforeLeaving.ts';
import { shelves } from '../deviceShelf.ts';
import { countHeld } from '../keeping/held.ts';
import { startPairsEngine } from '../keeping/pairsEngine.ts';
import { tellingOf } from '../keeping/telling.ts';
import { device } from './device.ts';
import { OrderPage } from './OrderPage.tsx';
import { Ordered, type OrderPageShop } from './ordering.ts';

interface PageData {
  readonly shop: OrderPageShop;
  readonly shopVersion: string;
  readonly words: Words;
}

function tellFailed(failed: boolean): void {
  const told = document.getElementById('order-failed');
  if (told !== null) told.hidden = !failed;
}

async function start(root: HTMLElement): Promise<void> {
  const data = JSON.parse(document.getElementById('order-data')?.textContent ?? '') as PageData;
  const { shop, shopVersion, words } = data;
  const parts = await loadOrderParts();
  const stores = createOrder({
    shelves: shelves(),
    ask: startPairsEngine(root.dataset['shop'] ?? '').basket,
    date: civilDateAt(Date.now(), shop.timeZone),
    random: (count) => crypto.getRandomValues(new Uint8Array(count)),
    ...{ parts, device, shop, shopVersion, words },
  });
  const { basket, unsaved } = stores;
  basket.failed.subscribe(tellFailed);
  basket.basket.subscribe(countHeld);
  addEventListener('storage', basket.refresh);
  addEventListener('pageshow', ({ persisted }) => persisted && basket.refresh());
  unsaved.subscribe(askBeforeLeaving);
  const stop = stores.form.typed.listen(() => {
    stop();
    // Asked for again when it is needed, and told then where it does not load.
    stores.prepare().catch(reportError);
  });
  const telling = tellingOf(words, shop);
  const o: typeof telling.say = (key, slots) => telling.say(`orderPage.${key}`, slots);
  const page = h(Ordered.Provider, {
    value: { stores, parts, shop, telling, o },
    children: h(OrderPage, null),
  });
  render(page, root);
  await basket.judge();
}

const root = document.getElementById('order-root');
if (root !== null)
  start(root).catch((error: unknown) => {
    tellFailed(true);
    reportError(error);
  });

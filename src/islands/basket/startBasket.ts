/** Brings the basket's page to life. */
import '../linksUnderBase.ts';
import { h, render } from 'preact';
import type { Words } from '../../catalogue/catalogue.ts';
import { civilDateAt } from '../../catalogue/civilDate.ts';
import { createBasket } from '../../configurator/basket/basketStores.ts';
import { shelves } from '../deviceShelf.ts';
import { countHeld } from '../keeping/held.ts';
import { startPairsEngine } from '../keeping/pairsEngine.ts';
import { tellingOf } from '../keeping/telling.ts';
import { Basket } from './Basket.tsx';
import type { BasketShop } from './Order.tsx';

interface PageData {
  readonly shop: BasketShop;
  readonly words: Words;
}

function start(root: HTMLElement): void {
  const { shop, words } = JSON.parse(document.getElementById('basket-data')?.textContent ?? '') as PageData;
  const stores = createBasket({
    shelves: shelves(),
    ask: startPairsEngine(root.dataset['shop'] ?? '').basket,
    date: civilDateAt(Date.now(), shop.timeZone),
  });
  stores.failed.subscribe((failed) => {
    const told = document.getElementById('basket-failed');
    if (told !== null) told.hidden = !failed;
  });
  stores.basket.subscribe(countHeld);
  // Another tab may change what is kept on the device; a page that comes back may have been changed meanwhile.
  addEventListener('storage', stores.refresh);
  addEventListener('pageshow', ({ persisted }) => persisted && stores.refresh());
  render(h(Basket, { stores, telling: tellingOf(words, shop), shop }), root);
  void stores.judge();
}

const root = document.getElementById('basket-root');
if (root !== null) start(root);

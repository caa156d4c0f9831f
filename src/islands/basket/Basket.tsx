/** The basket: its pairs, the whole order, and whether it is kept. */
import { useRef, useState } from 'preact/hooks';
import { pageHref } from '../../catalogue/languages.ts';
import { MOST_PAIRS } from '../../configurator/basket/basket.ts';
import type { BasketStores } from '../../configurator/basket/basketStores.ts';
import type { Telling } from '../keeping/telling.ts';
import { useStore } from '../useStore.ts';
import { BasketKeeping } from './BasketKeeping.tsx';
import { BasketPair } from './BasketPair.tsx';
import { type BasketShop, Order } from './Order.tsx';

export interface BasketProps {
  readonly stores: BasketStores;
  readonly telling: Telling;
  readonly shop: BasketShop;
}

export function Basket({ stores, telling, shop }: BasketProps) {
  const { say } = telling;
  const { pairs } = useStore(stores.basket);
  const answered = useStore(stores.answered);
  const failed = useStore(stores.failed);
  const [told, tell] = useState(stores.damaged ? say('damaged.basket') : '');
  const list = useRef<HTMLDivElement>(null);
  const remove = (id: number, number: number) => {
    stores.remove(id);
    tell(say('basket.removed', { number }));
    // The button that was pressed is gone: its list is the nearest place to go on from.
    list.current?.focus();
  };
  const copy = (id: number) => {
    const number = stores.copy(id);
    tell(number === null ? say('basket.full', { most: MOST_PAIRS }) : say('basket.copied', { number }));
  };
  const working = pairs.length > 0 && answered === null && !failed;
  return (
    <>
      <div role="status" class="bk-status">
        {working ? <p>{say('basket.working')}</p> : told !== '' && <p>{told}</p>}
      </div>
      <div class="bk-list" ref={list} tabIndex={-1}>
        {pairs.length === 0 && (
          <div class="prose">
            <p>{say('basket.empty')}</p>
            <p>{say('basket.emptyText')}</p>
            <p>
              <a class="go" href={pageHref(shop, '/frames/')}>
                {say('basket.toFrames')}
              </a>
            </p>
          </div>
        )}
        {answered !== null &&
          pairs.map((pair, index) => {
            const at = answered.basket.pairs.findIndex(({ id }) => id === pair.id);
            const known = answered.answer.pairs[at];
            if (known === undefined) return null;
            return (
              <BasketPair
                key={pair.id}
                telling={telling}
                pair={pair}
                number={index + 1}
                known={known}
                price={answered.answer.price}
                onCopy={() => copy(pair.id)}
                onRemove={() => remove(pair.id, index + 1)}
              />
            );
          })}
      </div>
      {answered !== null && pairs.length > 0 && (
        <Order stores={stores} telling={telling} shop={shop} answered={answered} />
      )}
      <BasketKeeping stores={stores} telling={telling} tell={tell} />
    </>
  );
}

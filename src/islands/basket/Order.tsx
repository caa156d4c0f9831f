/** The whole order: its terms and its price, and the way to order it. */
import { pageHref } from '../../catalogue/languages.ts';
import type { Shop } from '../../catalogue/shop.ts';
import type { Answered, BasketStores } from '../../configurator/basket/basketStores.ts';
import type { Telling } from '../keeping/telling.ts';
import { WholePrice } from './WholePrice.tsx';

/** The part of the shop that the page itself speaks of. */
export type BasketShop = Pick<
  Shop,
  | 'name'
  | 'language'
  | 'path'
  | 'currency'
  | 'currencyDigits'
  | 'timeZone'
  | 'destination'
  | 'places'
  | 'shipping'
  | 'exemptions'
>;

interface Props {
  readonly stores: BasketStores;
  readonly telling: Telling;
  readonly shop: BasketShop;
  readonly answered: Answered;
}

export function Order(props: Props) {
  const { say } = props.telling;
  return (
    <section class="bk-order" aria-labelledby="bk-order">
      <h2 id="bk-order">{say('basket.order')}</h2>
      <WholePrice {...props} />
      <p class="bk-go">
        <a class="ws-button" href={pageHref(props.shop, '/order/')}>
          {say('basket.toOrder')}
        </a>
      </p>
    </section>
  );
}

/** The price of the whole order, and the terms that it follows from. */
import { pageHref } from '../../catalogue/languages.ts';
import type { Answered } from '../../configurator/basket/basketStores.ts';
import { WholePrice } from '../basket/WholePrice.tsx';
import { idOf, useOrdering } from './ordering.ts';

export function OrderPrice({ answered }: { readonly answered: Answered }) {
  const { stores, shop, telling, o } = useOrdering();
  return (
    <section class="or-part" aria-labelledby={idOf('price')}>
      <h2 id={idOf('price')} tabIndex={-1}>
        {o('price')}
      </h2>
      <WholePrice stores={stores.basket} telling={telling} shop={shop} answered={answered} />
      <p class="ws-note">
        <a href={pageHref(shop, '/basket/')}>{o('toBasket')}</a>
      </p>
    </section>
  );
}

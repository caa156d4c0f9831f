/** The order of the basket on one page: pairs, buyer, consents, payment, review, sending. */
import { useState } from 'preact/hooks';
import { pageHref } from '../../catalogue/languages.ts';
import { pairPart } from '../../configurator/order/openItems.ts';
import { gonePairs, orderedPairs } from '../../configurator/order/orderedPairs.ts';
import { useLater } from '../useLater.ts';
import { useStore } from '../useStore.ts';
import { Buyer } from './Buyer.tsx';
import { Consents } from './Consents.tsx';
import { OrderKeeping } from './OrderKeeping.tsx';
import { OrderPair } from './OrderPair.tsx';
import { OrderPrice } from './OrderPrice.tsx';
import { idOf, useOrdering } from './ordering.ts';
import { Paying } from './Paying.tsx';
import { Review } from './Review.tsx';
import { Sending } from './Sending.tsx';

export function OrderPage() {
  const { stores, shop, o } = useOrdering();
  const { pairs } = useStore(stores.basket.basket);
  const answered = useStore(stores.basket.answered);
  const failed = useStore(stores.basket.failed);
  const [told, tell] = useState(stores.form.damaged ? o('damaged') : '');
  const working = pairs.length > 0 && answered === null && !failed;
  return (
    <>
      <div role="status" class="bk-status">
        {working ? <p>{o('working')}</p> : told !== '' && <p>{told}</p>}
      </div>
      {pairs.length === 0 && (
        <div class="prose">
          <p>{o('empty')}</p>
          <p>
            <a class="go" href={pageHref(shop, '/frames/')}>
              {o('toFrames')}
            </a>
          </p>
        </div>
      )}
      {answered !== null && pairs.length > 0 && (
        // Sent by its buttons alone: the return key in a field sends nothing.
        <form class="or-form" noValidate onSubmit={(event) => event.preventDefault()}>
          {gonePairs(answered).map(({ id, number, frame }) => (
            <section class="or-part" key={id} aria-labelledby={idOf(pairPart(id))}>
              <h2 id={idOf(pairPart(id))} tabIndex={-1}>
                {o('gone', { number })}
              </h2>
              <p class="ws-fault">{o('goneText', { frame })}</p>
              <p>
                <a href={pageHref(shop, '/basket/')}>{o('toBasket')}</a>
              </p>
            </section>
          ))}
          {orderedPairs(answered).map((pair, at, all) => (
            <OrderPair key={pair.id} pair={pair} first={at === 0 ? null : (all[0] ?? null)} />
          ))}
          <Buyer />
          <Consents />
          <Paying />
          <OrderPrice answered={answered} />
          <Review answered={answered} />
          <Sending />
          <Slip />
        </form>
      )}
      <OrderKeeping tell={tell} />
    </>
  );
}

/** The slip, once a file has left the page. */
function Slip() {
  const { stores, o } = useOrdering();
  const wanted = useStore(stores.form.gone) !== null;
  const part = useLater(() => import('./SlipTold.tsx'), wanted);
  if (!wanted || part === null) return null;
  return part === 'failed' ? <p class="ws-fault">{o('slipFailed')}</p> : <part.SlipTold />;
}

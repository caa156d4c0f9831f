/** How the order is paid, in the shop's words, with number and total filled in. No card data is asked for. */
import { paymentOf } from '../../configurator/order/draftOf.ts';
import { useStore } from '../useStore.ts';
import { idOf, type Ordering, useOrdering } from './ordering.ts';

export function Paying() {
  const ordering = useOrdering();
  const { stores, shop, o } = ordering;
  const chosen = paymentOf(shop, useStore(stores.form.typed, { keys: ['payment'] }));
  const ways = useWays(ordering);
  if (ways.length === 0) return null;
  const only = ways.length === 1;
  return (
    <fieldset class="or-part or-set">
      <legend class="or-legend">
        <h2 id={idOf('payment')} tabIndex={-1}>
          {o('payment')}
        </h2>
      </legend>
      {ways.map(({ id, label, words, link }) => (
        <div class="or-way" key={id}>
          {only ? (
            <p class="or-way-name">{label}</p>
          ) : (
            <div class="ws-tick">
              <input
                type="radio"
                id={idOf(`payment.${id}`)}
                name="payment"
                value={id}
                checked={chosen === id}
                aria-describedby={idOf(`payment.${id}.words`)}
                onChange={() => stores.form.enter('payment', id)}
              />
              <label class="or-way-name" for={idOf(`payment.${id}`)}>
                {label}
              </label>
            </div>
          )}
          <p id={idOf(`payment.${id}.words`)}>{words}</p>
          {link !== null && <p class="ws-note">{o('payLater')}</p>}
        </div>
      ))}
      <p class="ws-note">{o('payNote')}</p>
    </fieldset>
  );
}

/** The ways to pay, filled in; none while the order has no total. */
function useWays({ stores, shop, parts }: Ordering) {
  const number = useStore(stores.form.number);
  const total = useStore(stores.basket.answered)?.answer.price?.total;
  return total === undefined
    ? []
    : shop.order.payments.map((payment) => parts.fillPayment(shop, payment, number, total));
}

/** The link to the shop's payment page for the way that was chosen; nothing where it has none. */
export function PayLink() {
  const ordering = useOrdering();
  const { stores, shop, o } = ordering;
  const chosen = paymentOf(shop, useStore(stores.form.typed, { keys: ['payment'] }));
  const link = useWays(ordering).find(({ id }) => id === chosen)?.link ?? null;
  if (link === null) return null;
  return (
    <p>
      <a class="ws-button" href={link} target="_blank" rel="noopener noreferrer">
        {o('payTo')}
      </a>
    </p>
  );
}

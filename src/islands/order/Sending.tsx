/** The ways to send the order, what became of it, and whether the file is sealed. */
import type { Delivery } from '../../catalogue/orderTerms.ts';
import { askFirst } from '../keeping/askFirst.tsx';
import { useStore } from '../useStore.ts';
import { canShare } from './device.ts';
import { goTo, useOrdering } from './ordering.ts';
import { PayLink } from './Paying.tsx';

export function Sending() {
  const { stores, shop, telling, o } = useOrdering();
  const { delivery, publicKeys } = shop.order;
  const busy = useStore(stores.isBusy);
  const ways = delivery.filter((way) => way !== 'share' || canShare());
  const slots = { shop: shop.name, address: hostOf(shop.order.postTo) };
  const send = async (way: Delivery) => {
    await stores.send(way);
    if (stores.state.get().code === 'open') goTo('open');
  };
  return (
    <section class="or-part or-send" aria-labelledby="or-send">
      <h2 id="or-send">{o('send')}</h2>
      <p class={publicKeys.length === 0 ? 'or-unsealed' : undefined}>
        {telling.say(`order.sealed.${publicKeys.length === 0 ? 'no' : 'yes'}`, { shop: shop.name })}
      </p>
      <ul class="or-ways">
        {ways.map((way, at) => (
          <li key={way}>
            <button
              type="button"
              class={`ws-button${at === 0 ? ' or-first' : ''}${busy ? ' or-busy' : ''}`}
              // Not disabled: the focus would be lost with it.
              aria-disabled={busy ? 'true' : undefined}
              aria-describedby={`or-by-${way}`}
              onClick={() => send(way)}
            >
              {o(`by.${way}`, slots)}
            </button>
            <span class="ws-told" id={`or-by-${way}`}>
              {o(`byNote.${way}`, slots)}
            </span>
          </li>
        ))}
      </ul>
      {ways.length === 0 && <p>{o('noShare')}</p>}
      <Became />
    </section>
  );
}

const hostOf = (address: string | null): string => (address === null ? '' : new URL(address).host);

/** What became of it, told also to those who do not see it. */
function Became() {
  const { stores, shop, parts, o } = useOrdering();
  const { code, status } = useStore(stores.state);
  const gone = useStore(stores.form.gone);
  const changed = useStore(stores.changed);
  const number = useStore(stores.form.number);
  const slots = {
    file: gone?.file ?? '',
    email: shop.contact.email,
    address: hostOf(shop.order.postTo),
    number: parts.showNumber(number),
    status,
  };
  const mail = useStore(stores.mail);
  const anew = () =>
    askFirst(
      { heading: o('anewQuestion'), text: o('anewText'), yes: o('anew'), no: o('anewNo') },
      stores.startAnew,
    );
  return (
    <div class="or-became">
      <div role="status" class={`or-state or-state-${code}`}>
        <p>{o(`state.${code}`, slots)}</p>
        {changed && <p class="sh-caution">{o('changed')}</p>}
      </div>
      {gone !== null && !changed && (
        <>
          {gone.how === 'mailed' && mail !== null && (
            <p>
              <a href={mail}>{o('mailAgain')}</a>
            </p>
          )}
          <PayLink />
        </>
      )}
      {gone !== null && (
        <div class="or-anew">
          <button type="button" class="ws-button" onClick={anew}>
            {o('anew')}
          </button>
        </div>
      )}
    </div>
  );
}

/** The order at a glance before it leaves the page, and what it still lacks. */
import type { Answered } from '../../configurator/basket/basketStores.ts';
import { paymentOf } from '../../configurator/order/draftOf.ts';
import { orderedPairs } from '../../configurator/order/orderedPairs.ts';
import { ofPair, textIn } from '../../configurator/order/typed.ts';
import { addressLines } from '../../configurator/order/typedFaults.ts';
import { useStore } from '../useStore.ts';
import { dayText } from './dayText.ts';
import { goTo, idOf, useOrdering } from './ordering.ts';

export function Review({ answered }: { readonly answered: Answered }) {
  const { o } = useOrdering();
  return (
    <section class="or-part" aria-labelledby="or-review">
      <h2 id="or-review">{o('review')}</h2>
      <Facts answered={answered} />
      <StillOpen />
    </section>
  );
}

function Facts({ answered }: { readonly answered: Answered }) {
  const { stores, parts, shop, telling, o } = useOrdering();
  const typed = useStore(stores.form.typed);
  const files = useStore(stores.form.files);
  const number = useStore(stores.form.number);
  const unnamed = o('unnamed');
  const named = (field: string) => textIn(typed, field).trim() || unnamed;
  const payment = shop.order.payments.find(({ id }) => id === paymentOf(shop, typed));
  const contact = ['email', 'phone']
    .map((field) => textIn(typed, field).trim())
    .filter((text) => text !== '');
  const count = Object.values(files).flat().length;
  const { price, request } = answered.answer;
  const facts: readonly (readonly [string, readonly string[]])[] = [
    [o('number'), [parts.showNumber(number)]],
    [o('made'), [dayText(shop.language, request?.date)]],
    [
      o('things'),
      orderedPairs(answered).map(({ id, standing }) => {
        const model = standing.names.model || o('ownFrame');
        const wearer = textIn(typed, ofPair(id, 'wearer')).trim();
        return wearer === '' ? o('thingOpen', { model }) : o('thing', { model, wearer });
      }),
    ],
    [o('to'), [named('name'), ...addressLines(typed)]],
    [o('contact'), contact.length > 0 ? contact : [unnamed]],
    [o('attachments'), [o('attachmentsCount', { count })]],
    ...(shop.order.payments.length > 0 ? [[o('pay'), [payment?.label ?? unnamed]] as const] : []),
    [o('total'), [price === null ? o('none') : telling.figures.money(price.total)]],
  ];
  return (
    <dl class="or-facts">
      {facts.map(([name, lines]) => (
        <div key={name}>
          <dt>{name}</dt>
          {lines.map((line, at) => (
            <dd key={at}>{line}</dd>
          ))}
        </div>
      ))}
    </dl>
  );
}

/** What is missing or wrong; each line leads to its field. */
function StillOpen() {
  const { stores, telling, o } = useOrdering();
  const items = useStore(stores.open);
  if (items.length === 0) return <p class="or-complete">{o('complete')}</p>;
  return (
    <div class="or-open">
      <h3 class="ws-head" id={idOf('open')} tabIndex={-1}>
        {o('open', { count: items.length })}
      </h3>
      <p class="ws-note">{o('openText')}</p>
      <ul class="or-open-list">
        {items.map(({ field, key, slots, pair }) => {
          const text = telling.say(key, slots);
          return (
            <li key={`${field} ${key}`}>
              <a
                href={`#${idOf(field)}`}
                onClick={(event) => {
                  // The address stays as it is: nothing of the order goes into it.
                  event.preventDefault();
                  goTo(field);
                }}
              >
                {pair === null ? text : o('pairMissing', { number: pair, text })}
              </a>
            </li>
          );
        })}
      </ul>
    </div>
  );
}

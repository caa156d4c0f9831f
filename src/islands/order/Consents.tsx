/** The shop's sentences that are accepted, word for word. */
import { consentField } from '../../configurator/order/typed.ts';
import { useOrdering } from './ordering.ts';
import { Tick } from './Tick.tsx';

export function Consents() {
  const { shop, o } = useOrdering();
  const { consents } = shop.order;
  if (consents.length === 0) return null;
  return (
    <fieldset class="or-part or-set">
      <legend class="or-legend">
        <h2>{o('consents')}</h2>
      </legend>
      {consents.map(({ id, text }) => (
        <Tick key={id} name={consentField(id)} text={text} />
      ))}
    </fieldset>
  );
}

/** Who orders, where to, how to be reached; and whatever else is to be known. */
import { OrderField } from './OrderField.tsx';
import { useOrdering } from './ordering.ts';

export function Buyer() {
  const { o } = useOrdering();
  return (
    <section class="or-part" aria-labelledby="or-buyer">
      <h2 id="or-buyer">{o('buyer')}</h2>
      <div class="or-fields">
        <OrderField name="name" label={o('name')} autocomplete="name" />
        <div class="or-wide">
          <OrderField
            name="address"
            label={o('address')}
            note={o('addressNote')}
            autocomplete="street-address"
            rows={4}
          />
        </div>
        <OrderField
          name="email"
          label={o('email')}
          type="email"
          autocomplete="email"
          note={o('contactNote')}
        />
        <OrderField name="phone" label={o('phone')} type="tel" autocomplete="tel" />
        <div class="or-wide">
          <OrderField name="notes" label={o('notes')} note={o('notesNote')} rows={3} />
        </div>
      </div>
    </section>
  );
}

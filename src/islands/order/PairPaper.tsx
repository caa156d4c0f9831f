/** The prescription on paper: its date, who wrote it, what it says word for word, a picture of it. */
import { ofPair } from '../../configurator/order/typed.ts';
import { useStore } from '../useStore.ts';
import { Attachments } from './Attachments.tsx';
import { Labelled, OrderField } from './OrderField.tsx';
import { useOrdering } from './ordering.ts';

export function PairPaper({ id }: { readonly id: number }) {
  const { o } = useOrdering();
  return (
    <fieldset class="or-group">
      <legend class="or-legend ws-head">{o('paper')}</legend>
      <div class="or-fields">
        <Issued id={id} />
        <OrderField name={ofPair(id, 'prescriber')} label={o('prescriber')} />
        <OrderField name={ofPair(id, 'place')} label={o('place')} />
        <div class="or-wide">
          <OrderField name={ofPair(id, 'written')} label={o('written')} note={o('writtenNote')} rows={3} />
        </div>
        <Attachments id={id} />
      </div>
    </fieldset>
  );
}

/** The date is an entry of the worksheet: how old a prescription may be is a rule. */
function Issued({ id }: { readonly id: number }) {
  const { stores, telling, o } = useOrdering();
  useStore(stores.basket.basket);
  const answered = useStore(stores.basket.answered);
  const fault = answered?.answer.pairs
    .find((one) => one?.id === id)
    ?.standing.faults.find(({ field }) => field === 'issued');
  return (
    <Labelled
      name={ofPair(id, 'issued')}
      label={o('issued')}
      read={() => stores.basket.basket.get().pairs.find((one) => one.id === id)?.entries.issued ?? ''}
      fault={fault && telling.t('fault.expected', { message: fault.message, expected: fault.expected })}
    >
      {(told) => (
        <input
          {...told}
          type="date"
          onInput={({ currentTarget }) => stores.basket.enter(id, 'issued', currentTarget.value)}
        />
      )}
    </Labelled>
  );
}

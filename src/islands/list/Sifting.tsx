/** Sorting and filters of the list. */
import { useState } from 'preact/hooks';
import { MOUNTINGS } from '../../catalogue/frame.ts';
import { COLOUR_FAMILIES } from '../../configurator/list/colourFamily.ts';
import { type Filters, NO_FILTERS } from '../../configurator/list/filters.ts';
import { ORDERS, type Order } from '../../configurator/list/order.ts';
import { readNumber } from '../../configurator/readNumber.ts';
import { useStore } from '../useStore.ts';
import { Pick } from './Pick.tsx';
import { useList } from './stores.ts';

export function Sifting() {
  const { told, facts, order, filters, answers, shop } = useList();
  const by = useStore(order);
  const now = useStore(filters);
  const judged = useStore(answers).size > 0;
  const set = (change: Partial<Filters>) => filters.set({ ...filters.get(), ...change });
  const mountings = MOUNTINGS.filter((one) => facts.some(({ mounting }) => mounting === one));
  const colours = COLOUR_FAMILIES.filter((one) => facts.some((frame) => frame.colours.includes(one)));
  const active = Object.values(now).filter((value) => value !== null && value !== false).length;
  const [cleared, clear] = useState(0);
  return (
    <div class="fl-sifting">
      <Pick
        id="fl-order"
        label={told('order.legend')}
        chosen={by}
        options={ORDERS.map((value) => [value, told(`order.${value}`)])}
        onPick={(value) => order.set(value as Order)}
      />
      <details class="fl-filters">
        <summary>{active > 0 ? told('filter.active', { count: active }) : told('filter.legend')}</summary>
        <div class="fl-filter-fields">
          <Pick
            id="fl-mounting"
            label={told('filter.mounting')}
            chosen={now.mounting ?? ''}
            options={[
              ['', told('filter.any')],
              ...mountings.map((one) => [one, told(`mounting.${one}`)] as const),
            ]}
            onPick={(value) => set({ mounting: mountings.find((one) => one === value) ?? null })}
          />
          <Pick
            id="fl-colour"
            label={told('filter.colour')}
            chosen={now.colour ?? ''}
            options={[
              ['', told('filter.any')],
              ...colours.map((one) => [one, told(`colour.${one}`)] as const),
            ]}
            onPick={(value) => set({ colour: colours.find((one) => one === value) ?? null })}
          />
          <div class="fl-span" key={cleared}>
            <Limit id="fl-from" label={told('filter.widthFrom')} onRead={(mm) => set({ widthFromMm: mm })} />
            <Limit id="fl-to" label={told('filter.widthTo')} onRead={(mm) => set({ widthToMm: mm })} />
            <Limit
              id="fl-price"
              label={told('filter.price', { currency: shop.currency })}
              onRead={(amount) =>
                set({ priceToMinor: amount === null ? null : Math.round(amount * 10 ** shop.currencyDigits) })
              }
            />
          </div>
          <div class="ws-tick">
            <input
              type="checkbox"
              id="fl-able"
              checked={now.able}
              disabled={!judged && !now.able}
              onChange={({ currentTarget }) => set({ able: currentTarget.checked })}
            />
            <label for="fl-able">{told('filter.able')}</label>
          </div>
          <button
            type="button"
            class="ws-button"
            onClick={() => {
              filters.set(NO_FILTERS);
              clear(cleared + 1);
            }}
          >
            {told('filter.clear')}
          </button>
        </div>
      </details>
    </div>
  );
}

interface LimitProps {
  readonly id: string;
  readonly label: string;
  /** null: no limit. */
  readonly onRead: (value: number | null) => void;
}

/** A limit that is typed; what cannot be read limits nothing, and says so. */
function Limit({ id, label, onRead }: LimitProps) {
  const { told } = useList();
  const [unread, setUnread] = useState(false);
  const read = (text: string) => {
    const reading = readNumber(text);
    setUnread(reading.kind === 'unread');
    onRead(reading.kind === 'number' ? reading.value : null);
  };
  return (
    <div class="ws-field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autocomplete="off"
        onInput={({ currentTarget }) => read(currentTarget.value)}
        aria-invalid={unread ? 'true' : undefined}
        aria-describedby={`${id}-told`}
      />
      <p id={`${id}-told`} class={unread ? 'ws-told ws-fault' : 'ws-told'}>
        {unread && told('filter.unread')}
      </p>
    </div>
  );
}

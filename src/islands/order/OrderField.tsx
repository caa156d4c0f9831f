/** One entry of the order with its label, its note, and what is wrong with it once it was left. */
import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { textIn } from '../../configurator/order/typed.ts';
import { idOf, useOrdering } from './ordering.ts';

interface Props {
  readonly name: string;
  readonly label: string;
  readonly note?: string;
  readonly type?: 'text' | 'email' | 'tel';
  /** What the browser may fill in of the shopper; the wearer may be somebody else. */
  readonly autocomplete?: 'name' | 'street-address' | 'email' | 'tel';
  /** Lines of a text of several. */
  readonly rows?: number;
  readonly digits?: boolean;
}

export function OrderField({ name, label, note, type = 'text', autocomplete, rows, digits = false }: Props) {
  const { stores } = useOrdering();
  const value = textIn(useStore(stores.form.typed, { keys: [name] }), name);
  const shared = {
    name,
    value,
    autocomplete: autocomplete ?? 'off',
    onInput: ({ currentTarget }: { readonly currentTarget: { readonly value: string } }) =>
      stores.form.enter(name, currentTarget.value),
  };
  return (
    <Labelled name={name} label={label} note={note}>
      {(told) =>
        rows === undefined ? (
          <input {...shared} {...told} type={type} inputMode={digits ? 'decimal' : undefined} />
        ) : (
          <textarea {...shared} {...told} rows={rows} />
        )
      }
    </Labelled>
  );
}

interface ToldProps {
  readonly id: string;
  readonly 'aria-describedby': string;
  readonly 'aria-invalid': 'true' | undefined;
  readonly onBlur: () => void;
}

interface LabelledProps {
  readonly name: string;
  readonly label: string;
  readonly note?: string | undefined;
  /** What is wrong with it besides what the form finds. */
  readonly fault?: string | undefined;
  readonly children: (told: ToldProps) => ComponentChildren;
}

/** A label above what is entered, and below it what is to be said of it. */
export function Labelled({ name, label, note, fault, children }: LabelledProps) {
  const { stores, o } = useOrdering();
  const [left, setLeft] = useState(textIn(stores.form.typed.get(), name) !== '');
  const wrong = useStore(stores.faults).find(({ field }) => field === name);
  const found = wrong === undefined ? fault : o(`fault.${wrong.code}`, wrong.slots);
  const told = left ? found : undefined;
  const id = idOf(name);
  return (
    <div class="ws-field or-field">
      <label for={id}>{label}</label>
      {children({
        id,
        'aria-describedby': `${id}-told`,
        'aria-invalid': told === undefined ? undefined : 'true',
        onBlur: () => setLeft(true),
      })}
      <p id={`${id}-told`} class={told === undefined ? 'ws-told' : 'ws-told ws-fault'}>
        {told ?? note}
      </p>
    </div>
  );
}

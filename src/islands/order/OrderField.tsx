/** One entry of the order with its label, its note, and what is wrong with it once it was left. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { textIn } from '../../configurator/order/typed.ts';
import { useStore } from '../useStore.ts';
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
  const shared = {
    name,
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
  readonly value: string;
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
  /** What stands in it now, where the form does not hold it. */
  readonly read?: () => string;
  /**
   * Takes the value from here alone: this is also drawn again by itself, and a value from around it would then be an
   * older one, written over what was typed since.
   */
  readonly children: (told: ToldProps) => ComponentChildren;
}

/** A label above what is entered, and below it what is to be said of it. */
export function Labelled({ name, label, note, fault, read, children }: LabelledProps) {
  const { stores, o } = useOrdering();
  const typed = useStore(stores.form.typed, { keys: [name] });
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
        value: read === undefined ? textIn(typed, name) : read(),
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

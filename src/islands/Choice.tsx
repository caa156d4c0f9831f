/** A choice of a few: radio buttons in a row, the present one marked. */
import type { ComponentChildren } from 'preact';
import type { Field } from '../configurator/fields.ts';
import { idOf, useEntryStores } from './sheet.ts';

interface Option {
  readonly value: string;
  readonly label: ComponentChildren;
  /** A sentence below it. */
  readonly note?: string | null;
}

interface Props {
  readonly name: Field;
  readonly legend: string;
  readonly chosen: string;
  readonly options: readonly Option[];
}

export function Choice({ name, legend, chosen, options }: Props) {
  const { enter } = useEntryStores();
  return (
    <fieldset class="ws-choice">
      <legend>{legend}</legend>
      {options.map(({ value, label, note }) => {
        const id = `${idOf(name)}-${value}`;
        return (
          <div class="ws-pick" key={value}>
            <input
              type="radio"
              id={id}
              name={name}
              value={value}
              checked={value === chosen}
              onChange={() => enter(name, value)}
              aria-describedby={note ? `${id}-note` : undefined}
            />
            <label for={id}>{label}</label>
            {note && (
              <p id={`${id}-note`} class="ws-pick-note">
                {note}
              </p>
            )}
          </div>
        );
      })}
    </fieldset>
  );
}

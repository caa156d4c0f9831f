/** One entry with its label. What is wrong with it, or what it was read as, is told by a Message. */
import { Fragment } from 'preact';
import type { Field as Name } from '../configurator/fields.ts';
import { readAs } from '../configurator/readAs.ts';
import { idOf, useEntry, useEntryStores, useFault } from './sheet.ts';
import { useStore } from './useStore.ts';

interface Props {
  readonly name: Name;
  readonly label: string;
  /** What the label begins with for those who hear it, such as the eye. */
  readonly of?: string;
  readonly unit?: string;
  /** A keypad of digits; powers have none, since it lacks the minus. */
  readonly digits?: boolean;
  readonly type?: 'text' | 'date';
  /** What stands behind the label, such as `needed for this design`. */
  readonly mark?: string | null;
}

export function Field({ name, label, of, unit, digits = false, type = 'text', mark }: Props) {
  const { t, enter, leave } = useEntryStores();
  const value = useEntry(name);
  const fault = useFault(name);
  const id = idOf(name);
  return (
    <div class="ws-field">
      <label for={id}>
        {of && <span class="ws-unseen">{of + t('colon')}</span>}
        {label}
        {unit && <span class="ws-unit">,&nbsp;{unit}</span>}
        {mark && <span class="ws-needed"> {mark}</span>}
      </label>
      <input
        id={id}
        name={name}
        type={type}
        inputMode={digits ? 'decimal' : undefined}
        autocomplete="off"
        spellcheck={false}
        value={value}
        onInput={({ currentTarget }) => enter(name, currentTarget.value)}
        onBlur={() => leave(name)}
        aria-invalid={fault ? 'true' : undefined}
        aria-describedby={`${id}-told`}
      />
    </div>
  );
}

/** The fault of a field, or what it was read as where that is not what it says. Empty otherwise. */
export function Message({ name, label }: { readonly name: Name; readonly label?: string }) {
  const { t, entries, enter } = useEntryStores();
  const fault = useFault(name);
  const put = (text: string) => {
    enter(name, text);
    document.getElementById(idOf(name))?.focus();
  };
  const read = readAs(useStore(entries, { keys: [name] }), name);
  return (
    <p id={`${idOf(name)}-told`} class={fault ? 'ws-told ws-fault' : 'ws-told'}>
      {(fault || read) && label && <span class="ws-told-field">{label + t('colon')}</span>}
      {fault
        ? t('fault.expected', { message: fault.message, expected: fault.expected })
        : read && t(`read.${read}`)}
      {fault?.offers?.map((text) => (
        <Fragment key={text}>
          {' '}
          <button type="button" class="ws-take" onClick={() => put(text)}>
            {t('fault.offer', { text })}
          </button>
        </Fragment>
      ))}
    </p>
  );
}

/** The line of one eye on the prescription. */

import { type Field as Name, PRISM_ROWS } from '../configurator/fields.ts';
import type { Eye } from '../optics/types.ts';
import { Field, Message } from './Field.tsx';
import { idOf, useEntry, useEntryStores, useFault } from './sheet.ts';

const POWERS = ['sphere', 'cylinder', 'axis', 'add'] as const;
const BASES = ['in', 'out', 'up', 'down'] as const;

export function EyeRow({ eye }: { readonly eye: Eye }) {
  const { t, enter } = useEntryStores();
  const balance = useEntry(`${eye}.balance`) === 'yes';
  const of = t(eye);
  const told: [Name, string][] = [
    ...POWERS.map((name): [Name, string] => [`${eye}.${name}`, t(`prescription.${name}`)]),
    ...PRISM_ROWS.flatMap((row): [Name, string][] => [
      [`${eye}.prism${row}.amount`, t(`prescription.prism${row}`)],
      [`${eye}.prism${row}.base`, t(`prescription.base${row}`)],
    ]),
  ];
  return (
    <fieldset class="ws-eye">
      <legend>
        <span class="ws-letter" aria-hidden="true">
          {t(`${eye}Letter`)}
        </span>
        <span class="ws-unseen">{of}</span>
      </legend>
      <div class="ws-eye-fields">
        {POWERS.map((name) => (
          <Field
            key={name}
            name={`${eye}.${name}`}
            of={of}
            label={t(`prescription.${name}`)}
            unit={name === 'axis' ? t('unit.degree') : t('unit.dioptre')}
            digits={name === 'axis'}
          />
        ))}
        {PRISM_ROWS.map((row) => (
          <div class="ws-prism" key={row}>
            <Field
              name={`${eye}.prism${row}.amount`}
              of={of}
              label={t(`prescription.prism${row}`)}
              unit={t('unit.prism')}
              digits
            />
            <BaseField name={`${eye}.prism${row}.base`} of={of} label={t(`prescription.base${row}`)} />
          </div>
        ))}
      </div>
      {told.map(([name, label]) => (
        <Message key={name} name={name} label={label} />
      ))}
      <div class="ws-tick">
        <input
          type="checkbox"
          id={idOf(`${eye}.balance`)}
          name={`${eye}.balance`}
          value="yes"
          checked={balance}
          onChange={({ currentTarget }) => enter(`${eye}.balance`, currentTarget.checked ? 'yes' : '')}
        />
        <label for={idOf(`${eye}.balance`)}>
          <span class="ws-unseen">{of}: </span>
          {t('prescription.balance')}
        </label>
      </div>
    </fieldset>
  );
}

/** Towards which side the base of a prism lies. */
export function BaseField({
  name,
  of,
  label,
}: {
  readonly name: Name;
  readonly of: string;
  readonly label: string;
}) {
  const { t, enter, leave } = useEntryStores();
  const value = useEntry(name);
  const fault = useFault(name);
  const id = idOf(name);
  return (
    <div class="ws-field">
      <label for={id}>
        <span class="ws-unseen">{of}: </span>
        {label}
      </label>
      <select
        id={id}
        name={name}
        value={value}
        onChange={({ currentTarget }) => enter(name, currentTarget.value)}
        onBlur={() => leave(name)}
        aria-invalid={fault ? 'true' : undefined}
        aria-describedby={`${id}-told`}
      >
        <option value="">{t('prescription.choose')}</option>
        {BASES.map((base) => (
          <option key={base} value={base}>
            {t(`prescription.${base}`)}
          </option>
        ))}
      </select>
    </div>
  );
}

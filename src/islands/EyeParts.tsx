/** Parts of the line of one eye, for the worksheet and for the list of frames. */
import { type Field as Name, PRISM_ROWS } from '../configurator/fields.ts';
import type { Eye } from '../optics/types.ts';
import { Field } from './Field.tsx';
import { idOf, useEntry, useEntryStores, useFault } from './sheet.ts';

/** Powers of an eye, in the order in which a prescription gives them. */
export const POWERS = ['sphere', 'cylinder', 'axis', 'add'] as const;
const BASES = ['in', 'out', 'up', 'down'] as const;

interface OfEye {
  readonly eye: Eye;
}

/** R or L for the eye, the word for whoever listens. */
export function EyeLegend({ eye }: OfEye) {
  const { t } = useEntryStores();
  return (
    <legend>
      <span class="ws-letter" aria-hidden="true">
        {t(`${eye}Letter`)}
      </span>
      <span class="ws-unseen">{t(eye)}</span>
    </legend>
  );
}

export function PowerFields({ eye }: OfEye) {
  const { t } = useEntryStores();
  return (
    <>
      {POWERS.map((name) => (
        <Field
          key={name}
          name={`${eye}.${name}`}
          of={t(eye)}
          label={t(`prescription.${name}`)}
          unit={name === 'axis' ? t('unit.degree') : t('unit.dioptre')}
          digits={name === 'axis'}
        />
      ))}
    </>
  );
}

export function PrismFields({ eye }: OfEye) {
  const { t } = useEntryStores();
  const of = t(eye);
  return (
    <>
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
    </>
  );
}

/** Ticked where the eye has no prescription of its own. */
export function BalanceTick({ eye }: OfEye) {
  const { t, enter } = useEntryStores();
  const name = `${eye}.balance` as const;
  const id = idOf(name);
  return (
    <div class="ws-tick">
      <input
        type="checkbox"
        id={id}
        name={name}
        value="yes"
        checked={useEntry(name) === 'yes'}
        onChange={({ currentTarget }) => enter(name, currentTarget.checked ? 'yes' : '')}
      />
      <label for={id}>
        <span class="ws-unseen">{t(eye) + t('colon')}</span>
        {t('prescription.balance')}
      </label>
    </div>
  );
}

/** Towards which side the base of a prism lies. */
function BaseField({
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
        <span class="ws-unseen">{of + t('colon')}</span>
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

/** Entries that most prescriptions lack, folded away: prism, a balance lens, date and vertex distance. */
import { EYES, PRISM_ROWS } from '../../configurator/fields.ts';
import type { Eye } from '../../optics/types.ts';
import { BaseField } from '../EyeRow.tsx';
import { Field, Message } from '../Field.tsx';
import { idOf, useEntry } from '../sheet.ts';
import { useList } from './stores.ts';

export function Rarer() {
  const { t, told } = useList();
  return (
    <details class="ws-more">
      <summary>{told('more')}</summary>
      {EYES.map((eye) => (
        <RarerOfEye key={eye} eye={eye} />
      ))}
      <div class="ws-line">
        <Field name="issued" label={t('prescription.issued')} type="date" />
        <Field name="vertexTested" label={t('prescription.vertexTested')} unit={t('unit.mm')} digits />
      </div>
      <Message name="issued" label={t('prescription.issued')} />
      <Message name="vertexTested" label={t('prescription.vertexTested')} />
    </details>
  );
}

function RarerOfEye({ eye }: { readonly eye: Eye }) {
  const { t, enter } = useList();
  const of = t(eye);
  const balance = useEntry(`${eye}.balance`) === 'yes';
  const id = idOf(`${eye}.balance`);
  return (
    <fieldset class="ws-eye">
      <legend>{of}</legend>
      <div class="ws-eye-fields">
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
      {PRISM_ROWS.flatMap((row) => [
        <Message
          key={`amount ${row}`}
          name={`${eye}.prism${row}.amount`}
          label={t(`prescription.prism${row}`)}
        />,
        <Message key={`base ${row}`} name={`${eye}.prism${row}.base`} label={t(`prescription.base${row}`)} />,
      ])}
      <div class="ws-tick">
        <input
          type="checkbox"
          id={id}
          name={`${eye}.balance`}
          value="yes"
          checked={balance}
          onChange={({ currentTarget }) => enter(`${eye}.balance`, currentTarget.checked ? 'yes' : '')}
        />
        <label for={id}>
          <span class="ws-unseen">{of}: </span>
          {t('prescription.balance')}
        </label>
      </div>
    </fieldset>
  );
}

/** Entries that most prescriptions lack, folded away: prism, a balance lens, date and vertex distance. */
import { EYES, PRISM_ROWS } from '../../configurator/fields.ts';
import type { Eye } from '../../optics/types.ts';
import { BalanceTick, PrismFields } from '../EyeParts.tsx';
import { Field, Message } from '../Field.tsx';
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
  const { t } = useList();
  return (
    <fieldset class="ws-eye">
      <legend>{t(eye)}</legend>
      <div class="ws-eye-fields">
        <PrismFields eye={eye} />
      </div>
      {PRISM_ROWS.flatMap((row) => [
        <Message
          key={`amount ${row}`}
          name={`${eye}.prism${row}.amount`}
          label={t(`prescription.prism${row}`)}
        />,
        <Message key={`base ${row}`} name={`${eye}.prism${row}.base`} label={t(`prescription.base${row}`)} />,
      ])}
      <BalanceTick eye={eye} />
    </fieldset>
  );
}

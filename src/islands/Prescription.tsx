/** The prescription as its form has it: right above left, the date and the vertex distance below. */
import { EYES } from '../configurator/fields.ts';
import { EyeRow } from './EyeRow.tsx';
import { FormSwitch, PasteSlot, UseSlot } from './entry/PrescriptionTools.tsx';
import { Field, Message } from './Field.tsx';
import { useSheet } from './sheet.ts';
import { useStore } from './useStore.ts';

export function Prescription() {
  const sheet = useSheet();
  const { t, data } = sheet;
  const use = useStore(sheet.chosen.use);
  return (
    <section class="ws-part" aria-labelledby="ws-prescription">
      <h3 id="ws-prescription">{t('prescription.legend')}</h3>
      <p class="ws-lead">{use === 'none' ? t('prescription.unused') : t('prescription.text')}</p>
      <PasteSlot />
      {EYES.map((eye) => (
        <EyeRow key={eye} eye={eye} />
      ))}
      <UseSlot />
      <FormSwitch />
      <div class="ws-line">
        <Field name="issued" label={t('prescription.issued')} type="date" />
        <Field name="vertexTested" label={t('prescription.vertexTested')} unit={t('unit.mm')} digits />
      </div>
      <Message name="issued" label={t('prescription.issued')} />
      <Message name="vertexTested" label={t('prescription.vertexTested')} />
      <p class="ws-note">{t('prescription.validity', { months: data.shop.habits.prescriptionMonths })}</p>
    </section>
  );
}

/** The prescription in short: powers, PD and height of both eyes, use and wearer; what few have lies folded below. */
import { useStore } from '@nanostores/preact';
import { USES } from '../../catalogue/design.ts';
import { EYES, PRISM_ROWS } from '../../configurator/fields.ts';
import type { Eye } from '../../optics/types.ts';
import { WEARERS } from '../../quote/request.ts';
import { Choice } from '../Choice.tsx';
import { BaseField } from '../EyeRow.tsx';
import { Field, Message } from '../Field.tsx';
import { idOf, useEntry } from '../sheet.ts';
import { ListKeeping } from './ListKeeping.tsx';
import { useList } from './stores.ts';

export function ListPrescription() {
  const { t, told, read, shop } = useList();
  const { use, needs } = useStore(read);
  return (
    <div class="fl-prescription">
      <p class="ws-lead">{told('text')}</p>
      <p class="ws-lead">{t('prescription.text')}</p>
      <People use={use} />
      <Choice
        name="pd.mode"
        legend={t('measures.pdMode')}
        chosen={useEntry('pd.mode') === 'both' ? 'both' : 'each'}
        options={['each', 'both'].map((value) => ({ value, label: t(`measures.${value}`) }))}
      />
      {EYES.map((eye) => (
        <EyeLine key={eye} eye={eye} />
      ))}
      {useEntry('pd.mode') === 'both' && (
        <div class="ws-line">
          <Field name="pd.both" label={t('measures.pdBoth')} unit={t('unit.mm')} digits />
          <Message name="pd.both" />
        </div>
      )}
      <p class="ws-note">{told('heightText', { mm: shop.habits.datumAboveCentreMm })}</p>
      <Rarer />
      {needs.length > 0 && (
        <p class="fl-needs">
          {told('needs.head')} {needs.map((need) => told(`needs.${need}`)).join('; ')}.
        </p>
      )}
      <p class="ws-note">{told('basis', { destination: shop.destination })}</p>
      <ListKeeping />
      <p class="ws-note">{t('advice')}</p>
    </div>
  );
}

function People({ use }: { readonly use: string }) {
  const { t, told } = useList();
  const wearer = useEntry('wearer');
  return (
    <>
      <Choice
        name="use"
        legend={t('use.legend')}
        chosen={use}
        options={USES.map((value) => ({ value, label: t(`use.${value}`) }))}
      />
      <Choice
        name="wearer"
        legend={told('wearer.legend')}
        chosen={wearer}
        options={['', ...WEARERS].map((value) => ({
          value,
          label: value === '' ? told('wearer.any') : t(`wearer.${value}`),
        }))}
      />
    </>
  );
}

const POWERS = ['sphere', 'cylinder', 'axis', 'add'] as const;

function EyeLine({ eye }: { readonly eye: Eye }) {
  const { t, told } = useList();
  const single = useEntry('pd.mode') === 'both';
  const of = t(eye);
  const measures = [
    ...(single ? [] : [{ name: `pd.${eye}` as const, label: t('measures.short.pd') }]),
    { name: `fittingHeight.${eye}` as const, label: told('height') },
  ];
  const named = [
    ...POWERS.map((name) => ({ name: `${eye}.${name}` as const, label: t(`prescription.${name}`) })),
    ...measures,
  ];
  return (
    <fieldset class="ws-eye">
      <legend>
        <span class="ws-letter" aria-hidden="true">
          {t(`${eye}Letter`)}
        </span>
        <span class="ws-unseen">{of}</span>
      </legend>
      <div class="fl-eye-fields">
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
        {measures.map(({ name, label }) => (
          <Field key={name} name={name} of={of} label={label} unit={t('unit.mm')} digits />
        ))}
      </div>
      {named.map(({ name, label }) => (
        <Message key={name} name={name} label={label} />
      ))}
    </fieldset>
  );
}

/** Entries that most prescriptions lack. */
function Rarer() {
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

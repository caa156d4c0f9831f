/** The prescription in short: powers and PD of both eyes, use and wearer; what few have lies folded below. */
import { USES } from '../../catalogue/design.ts';
import { countryNames, placeName } from '../../configurator/destinations.ts';
import { EYES, type Field as Name } from '../../configurator/fields.ts';
import type { Eye } from '../../optics/types.ts';
import { WEARERS } from '../../quote/request.ts';
import { EyeLegend, POWERS, PowerFields } from '../EyeParts.tsx';
import { Field, Message } from '../Field.tsx';
import { idOf, useEntry } from '../sheet.ts';
import { useStore } from '../useStore.ts';
import { ListKeeping } from './ListKeeping.tsx';
import { Pick } from './Pick.tsx';
import { Rarer } from './Rarer.tsx';
import { useList } from './stores.ts';
import { TakeAlong } from './TakeAlong.tsx';

export function ListPrescription() {
  const { t, told, read, shop } = useList();
  const { use, needs } = useStore(read);
  return (
    <div class="fl-prescription">
      <p class="ws-lead">
        {told('text')} {t('prescription.text')}
      </p>
      <Terms use={use} />
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
          {told('needs.head')} {needs.map((need) => told(`needs.${need}`)).join(t('semicolon'))}.
        </p>
      )}
      <p class="ws-note">
        {told('basis', {
          destination: placeName(shop.destination, shop, countryNames(shop.language)),
        })}
      </p>
      <TakeAlong />
      <ListKeeping />
      <p class="ws-note">{t('advice')}</p>
    </div>
  );
}

/** What the lenses are for, who wears them, and how the PD is known. */
function Terms({ use }: { readonly use: string }) {
  const { t, told } = useList();
  return (
    <div class="fl-terms">
      <PickField
        name="use"
        label={t('use.legend')}
        chosen={use}
        options={USES.map((value) => [value, t(`use.${value}`)])}
      />
      <PickField
        name="wearer"
        label={told('wearer.legend')}
        chosen={useEntry('wearer')}
        options={[
          ['', told('wearer.any')],
          ...WEARERS.map((value): [string, string] => [value, t(`wearer.${value}`)]),
        ]}
      />
      <PickField
        name="pd.mode"
        label={t('measures.pdMode')}
        chosen={useEntry('pd.mode') === 'both' ? 'both' : 'each'}
        options={['each', 'both'].map((value) => [value, t(`measures.${value}`)])}
      />
    </div>
  );
}

interface PickFieldProps {
  readonly name: Name;
  readonly label: string;
  readonly chosen: string;
  readonly options: readonly (readonly [value: string, text: string])[];
}

/** An entry of a few values. */
function PickField({ name, ...pick }: PickFieldProps) {
  const { enter } = useList();
  return <Pick id={idOf(name)} name={name} {...pick} onPick={(value) => enter(name, value)} />;
}

function EyeLine({ eye }: { readonly eye: Eye }) {
  const { t } = useList();
  const single = useEntry('pd.mode') === 'both';
  const of = t(eye);
  const measures = single ? [] : [{ name: `pd.${eye}` as const, label: t('measures.short.pd') }];
  const named = [
    ...POWERS.map((name) => ({ name: `${eye}.${name}` as const, label: t(`prescription.${name}`) })),
    ...measures,
  ];
  return (
    <fieldset class="ws-eye">
      <EyeLegend eye={eye} />
      <div class="fl-eye-fields">
        <PowerFields eye={eye} />
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

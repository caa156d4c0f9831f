/** What is measured on one lens. */
import type { Eye } from '../../optics/types.ts';
import type { JudgedPair } from '../../quote/judgePair.ts';
import { type Entering, Entry, idOf } from './Entry.tsx';
import { eyeFields, type MeasureField, verificationFields } from './measureFields.ts';
import { useBench } from './useBench.ts';

interface Props extends Entering {
  readonly judged: JudgedPair;
  readonly at: number;
  readonly eye: Eye;
  readonly unit: (field: MeasureField) => string;
  readonly wrongOf: (key: string) => string | undefined;
}

/** Fields of a prism, each with the two directions that its base may have. */
const BASES: Readonly<Record<string, readonly [string, string]>> = {
  across: ['in', 'out'],
  upright: ['up', 'down'],
};

export function InspectEye(props: Props) {
  const { judged, eye } = props;
  const { t, w } = useBench();
  return (
    <fieldset class="wr-eye">
      <legend>{w(`eye.${eye}`)}</legend>
      <div class="wr-measures">
        {eyeFields(judged).map((field) => (
          <Measure key={field.name} {...props} field={field} />
        ))}
      </div>
      <details>
        <summary>{t('inspect.stated')}</summary>
        <p class="ws-note">{t('inspect.statedSays')}</p>
        <div class="wr-measures">
          {verificationFields(judged).map((field) => (
            <Measure key={field.name} {...props} field={field} />
          ))}
        </div>
      </details>
    </fieldset>
  );
}

function Measure({ typed, enter, at, eye, field, unit, wrongOf }: Props & { readonly field: MeasureField }) {
  const { t, w } = useBench();
  const key = `${eye}.${field.name}`;
  const name = `${at}.${key}`;
  const what = t(`inspect.${field.says ?? field.name.replace('stated-', '')}`);
  const bases = BASES[field.name];
  const entry = (
    <Entry
      {...{ typed, enter }}
      field={name}
      label={`${what}, ${unit(field)}`}
      wrong={wrongOf(key)}
      most={12}
    />
  );
  if (bases === undefined) return entry;
  return (
    <div class="wr-prism">
      {entry}
      <div class="ws-field">
        <label for={idOf(`${name}Base`)}>{t('inspect.base')}</label>
        <select
          id={idOf(`${name}Base`)}
          value={typed(`${name}Base`) || bases[0]}
          onInput={({ currentTarget }) => enter(`${name}Base`, currentTarget.value)}
        >
          {bases.map((base) => (
            <option key={base} value={base}>
              {w(`base.${base}`)}
            </option>
          ))}
        </select>
      </div>
    </div>
  );
}

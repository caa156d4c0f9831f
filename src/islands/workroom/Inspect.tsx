/** The inspection of one pair: what is measured on it, eye by eye, and how it comes out, at once. */
import type { JudgedPair } from '../../quote/judgePair.ts';
import { inspectPair } from '../../workroom/inspection/inspectPair.ts';
import { howRead } from '../../workroom/papers/inspectionWords.ts';
import type { Draft } from './benchState.ts';
import { Earlier } from './Earlier.tsx';
import { type Entering, Entry } from './Entry.tsx';
import { earlierDrafts, setAside } from './earlier.ts';
import { InspectEye } from './InspectEye.tsx';
import { InspectResult } from './InspectResult.tsx';
import { type MeasureField, pairFields } from './measureFields.ts';
import { pairDraft, readMeasured } from './measuring.ts';
import { useBench } from './useBench.ts';

interface Props extends Entering {
  /** Puts another draft in the place of this one. */
  readonly write: (draft: Draft) => void;
  readonly judged: JudgedPair;
  readonly at: number;
  readonly count: number;
}

export function Inspect({ judged, at, count, draft, typed, enter, write }: Props) {
  const { t, w, offer } = useBench();
  const { alignment } = offer.workroom;
  const { measured, wrong, missing } = readMeasured(judged, pairDraft(draft, at), alignment.length);
  const entering = { draft, typed, enter };
  const unit = (field: MeasureField) => w(`unit.${field.unit === 'prism' ? 'prism-dioptres' : field.unit}`);
  const wrongOf = (key: string) => {
    const found = wrong.find((one) => one.key === key);
    if (found === undefined) return undefined;
    const { least, most } = found.field;
    return t(`inspect.wrong.${found.why}`, {
      typed: typed(`${at}.${key}`).trim(),
      least,
      most,
      unit: unit(found.field),
    });
  };
  const wrongFields = wrong.map(({ key, field }) => {
    const what = t(`inspect.${field.name.replace('stated-', '')}`);
    const part = field.name.startsWith('stated-') ? `${what} (${t('inspect.stated')})` : what;
    const [eye] = key.split('.');
    return eye === key ? part : t('inspect.named', { field: part, eye: w(`eye.${eye}`) });
  });
  const own = { ...entering, judged, at, unit, wrongOf };
  const found = measured && inspectPair(judged, measured, offer);
  const id = `wr-inspect-${at}`;
  return (
    <section class="wr-part" aria-labelledby={id}>
      <h3 id={id} class="ws-head">
        {count > 1 ? t('inspect.titleOf', { pair: at + 1, count }) : w('inspection.title')}
      </h3>
      <p class="ws-note">
        {t('inspect.says', { design: judged.situation.design.name, how: howRead(w, judged) })}
      </p>
      <div class="wr-eyes">
        <InspectEye {...own} eye="right" />
        <InspectEye {...own} eye="left" />
      </div>
      <div class="wr-form">
        {pairFields(judged).map((field) => (
          <Entry
            key={field.name}
            {...entering}
            field={`${at}.${field.name}`}
            label={`${t(`inspect.${field.name}`)}, ${unit(field)}`}
            wrong={wrongOf(field.name)}
          />
        ))}
        <Entry {...entering} field={`${at}.by`} label={t('inspect.by')} most={40} />
        <Entry {...entering} field={`${at}.on`} label={t('inspect.on')} type="date" />
        <Entry {...entering} field={`${at}.remarks`} label={t('inspect.remarks')} wide />
      </div>
      <fieldset class="wr-aligned">
        <legend>{w('inspection.alignment')}</legend>
        {alignment.map((line, row) => (
          <label key={line} class="wr-tick">
            <input
              type="checkbox"
              checked={draft[`${at}.aligned.${row}`] === 'yes'}
              onChange={({ currentTarget }) =>
                enter(`${at}.aligned.${row}`, currentTarget.checked ? 'yes' : '')
              }
            />
            {line}
          </label>
        ))}
      </fieldset>
      {wrong.length > 0 && (
        <p class="ws-fault">{t('inspect.wrongFields', { fields: wrongFields.join('; ') })}</p>
      )}
      {missing.length > 0 && (
        <p class="ws-note">
          {t('inspect.missing', { eyes: missing.map((eye) => w(`eye.${eye}`)).join(', ') })}
        </p>
      )}
      {found !== null && (
        <>
          <InspectResult judged={judged} found={found} />
          <button class="ws-button" type="button" onClick={() => write(setAside(draft, at))}>
            {t('inspect.again')}
          </button>
        </>
      )}
      <Earlier judged={judged} drafts={earlierDrafts(draft, at)} />
    </section>
  );
}

/** Where the pupils are, and how the frame sits. */
import { pageHref } from '../catalogue/languages.ts';
import { isOwn } from '../configurator/entry/ownFrame.ts';
import { EYES, type Field as Name, type Paired } from '../configurator/fields.ts';
import { halvedPd } from '../configurator/readFit.ts';
import { Choice } from './Choice.tsx';
import { HeightsSlot, PdHelp } from './entry/MeasureTools.tsx';
import { Field, Message } from './Field.tsx';
import { useSheet } from './sheet.ts';
import { useStore } from './useStore.ts';

export function Measures() {
  const sheet = useSheet();
  const { t, data, frame } = sheet;
  const chosen = useStore(sheet.chosen.design);
  const entries = useStore(sheet.entries);
  const single = entries['pd.mode'] === 'both';
  const { corridor = null, segment = null } = data.designs.find(({ id }) => id === chosen) ?? {};
  const use = useStore(sheet.chosen.use);
  const power = use !== 'none';
  // What a choice does not ask for is folded away, unless something stands there.
  const asks = (name: Paired, when: unknown) =>
    when || (['right', 'left', 'both'] as const).some((part) => entries[`${name}.${part}` as Name]);
  const near = asks('nearPd', use === 'near' || corridor || segment);
  // An own frame is asked for its face form where it is measured.
  const own = isOwn(frame);
  const needed = (when: unknown) => (when && power ? t('measures.needed') : null);
  return (
    <section class="ws-part" aria-labelledby="ws-measures">
      <h3 id="ws-measures">{t('measures.legend')}</h3>
      <p class="ws-lead">
        {t('measures.text')} <a href={pageHref(data.shop, '/measuring/')}>{t('measures.how')}</a>
      </p>
      <Choice
        name="pd.mode"
        legend={t('measures.pdMode')}
        chosen={single ? 'both' : 'each'}
        options={[
          { value: 'each', label: t('measures.each') },
          { value: 'both', label: t('measures.both') },
        ]}
      />
      <div class="ws-measures">
        {single ? (
          <div class="ws-line">
            <Single name="pd.both" label={t('measures.pdBoth')} mark={power ? t('measures.always') : null} />
            {near && <Single name="nearPd.both" label={t('measures.nearPdBoth')} />}
          </div>
        ) : (
          <>
            <Pair
              name="pd"
              legend={t('measures.pdEach')}
              mark={halvedPd(entries) ? t('measures.halves') : power ? t('measures.always') : null}
            />
            {near && <Pair name="nearPd" legend={t('measures.nearPdEach')} />}
          </>
        )}
        <PdHelp />
        {asks('fittingHeight', !segment) && (
          <Pair name="fittingHeight" legend={t('measures.fittingHeight')} mark={needed(corridor)} />
        )}
        {asks('segmentHeight', segment) && (
          <Pair name="segmentHeight" legend={t('measures.segmentHeight')} mark={needed(segment)} />
        )}
      </div>
      <HeightsSlot />
      <details class="ws-more">
        <summary>{t('measures.worn')}</summary>
        <div class="ws-line">
          <Single name="vertexWorn" label={t('measures.vertexWorn')} />
          <Single name="tilt" label={t('measures.tilt')} unit={t('unit.degree')} />
          {!own && <Single name="faceForm" label={t('measures.faceForm')} unit={t('unit.degree')} />}
        </div>
        <p class="ws-note">
          {t(own ? 'entry.own.assumed' : 'measures.assumed', {
            tilt: data.shop.habits.pantoscopicTiltDeg,
            faceForm: frame.faceFormDeg,
          })}
        </p>
      </details>
    </section>
  );
}

interface SingleProps {
  readonly name: Name;
  readonly label: string;
  readonly unit?: string;
  readonly mark?: string | null;
}

/** One number and what is told of it. */
function Single({ name, label, unit, mark = null }: SingleProps) {
  const { t } = useSheet();
  return (
    <div class="ws-single">
      <Field name={name} label={label} unit={unit ?? t('unit.mm')} digits mark={mark} />
      <Message name={name} />
    </div>
  );
}

interface PairProps {
  readonly name: Paired;
  readonly legend: string;
  readonly mark?: string | null;
}

/** A measurement of each eye. */
function Pair({ name, legend, mark }: PairProps) {
  const { t } = useSheet();
  return (
    <fieldset class="ws-pair">
      <legend>
        {legend} {mark && <span class="ws-needed">{mark}</span>}
      </legend>
      {EYES.map((eye) => (
        <Field key={eye} name={`${name}.${eye}`} label={t(eye)} unit={t('unit.mm')} digits />
      ))}
      {EYES.map((eye) => (
        <Message key={eye} name={`${name}.${eye}`} label={t(eye)} />
      ))}
    </fieldset>
  );
}

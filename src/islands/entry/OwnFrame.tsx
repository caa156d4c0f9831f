/** The frame that a shopper already has: its measurements, its shape, how it holds the lens; drawn as it is typed. */
import { MOUNTINGS } from '../../catalogue/frame.ts';
import { mountingOf, USUAL_FAMILY } from '../../configurator/entry/ownFrame.ts';
import type { Field as Name } from '../../configurator/fields.ts';
import { Choice } from '../Choice.tsx';
import { Field, Message } from '../Field.tsx';
import { useEntry, useSheet } from '../sheet.ts';
import { useStore } from '../useStore.ts';
import type { FamilyPaths } from './familyPaths.ts';
import { Later } from './Later.tsx';

const MEASURES = ['own.a', 'own.b', 'own.dbl', 'own.ed'] as const;

export function OwnFrame({ paths }: { readonly paths: FamilyPaths }) {
  const { t, read } = useSheet();
  const { waits } = useStore(read);
  const family = useEntry('own.family') || USUAL_FAMILY;
  const mounting = mountingOf({ 'own.mounting': useEntry('own.mounting') });
  return (
    <>
      <p class="ws-lead">{t('entry.own.text')}</p>
      <div class="en-own">
        <div class="en-own-fields">
          {MEASURES.map((name) => (
            <Measure key={name} name={name} note={name === 'own.ed' ? t('entry.own.edHint') : null} />
          ))}
        </div>
        <div class="en-own-drawing">
          <Later
            load={() => import('./OwnDrawing.tsx').then((m) => m.OwnDrawing)}
            wanted={!waits}
            meanwhile={<p class="ws-note">{t('entry.own.waiting')}</p>}
          />
        </div>
      </div>
      <div class="en-families">
        <Choice
          name="own.family"
          legend={t('entry.own.family')}
          chosen={family}
          options={Object.entries(paths).map(([value, path]) => ({
            value,
            label: (
              <>
                <svg class="en-family" viewBox="-29 -25 58 50" aria-hidden="true">
                  <path d={path} />
                </svg>
                {t(`entry.own.${value}`)}
              </>
            ),
          }))}
        />
      </div>
      <Message name="own.family" />
      <Choice
        name="own.mounting"
        legend={t('entry.own.mounting')}
        chosen={mounting}
        options={MOUNTINGS.map((value) => ({ value, label: t(`entry.own.${value}`) }))}
      />
      <div class="ws-line">
        <div class="ws-single">
          <Field name="faceForm" label={t('entry.own.faceForm')} unit={t('unit.degree')} digits />
          <Message name="faceForm" />
        </div>
      </div>
      <p class="ws-note">{t('entry.own.estimate')}</p>
    </>
  );
}

/** A measurement; one with a note may be left out. */
function Measure({ name, note }: { readonly name: Name; readonly note: string | null }) {
  const { t } = useSheet();
  return (
    <div class="ws-single">
      <Field
        name={name}
        label={t(`entry.${name}`)}
        unit={t('unit.mm')}
        digits
        mark={note === null ? t('measures.always') : null}
      />
      <Message name={name} />
      {note && <p class="ws-note">{note}</p>}
    </div>
  );
}

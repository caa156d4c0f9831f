/** One of the drawings of the present pair, and what its sections are laid over. */
import { useState } from 'preact/hooks';
import { LENS_KINDS } from '../configurator/optionKinds.ts';
import { optionName } from '../configurator/optionRows.ts';
import type { Drawn } from '../configurator/worksheet.ts';
import { EdgeDrawing } from './drawings/EdgeDrawing.tsx';
import { FrontDrawing } from './drawings/FrontDrawing.tsx';
import { GazeDrawing } from './drawings/GazeDrawing.tsx';
import { LightDrawing } from './drawings/LightDrawing.tsx';
import { SectionDrawing } from './drawings/SectionDrawing.tsx';
import { teller } from './drawings/tell.ts';
import { telling } from './keeping/pageTelling.ts';
import type { Telling } from './keeping/telling.ts';
import { useSheet } from './sheet.ts';
import { useLater } from './useLater.ts';
import { useStore } from './useStore.ts';
import '../styles/drawings.css';

const DRAWINGS = ['pair', 'section', 'edge', 'gaze', 'light'] as const;
type Drawing = (typeof DRAWINGS)[number];

export function Shown() {
  const sheet = useSheet();
  const { t } = sheet;
  const drawn = useStore(sheet.drawings);
  const words = useLater(() => telling(sheet), true);
  const [shown, show] = useState<Drawing>('pair');
  return (
    <>
      <fieldset class="ws-shown">
        <legend class="ws-unseen">{t('shown.legend')}</legend>
        {DRAWINGS.map((one) => (
          <label key={one}>
            <input type="radio" name="ws-shown" checked={one === shown} onChange={() => show(one)} />
            <span>{t(`shown.${one}`)}</span>
          </label>
        ))}
      </fieldset>
      {shown === 'section' && <Beside />}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and has to by keyboard too. */}
      <section class="ws-board" aria-label={t(`shown.${shown}`)} tabIndex={0}>
        {words === 'failed' ? (
          <p class="ws-note">{t('shown.failed')}</p>
        ) : drawn === null || words === null ? (
          <p class="ws-note">{t('shown.loading')}</p>
        ) : (
          <One shown={shown} drawn={drawn} words={words} />
        )}
      </section>
    </>
  );
}

function One({
  shown,
  drawn: { view, compared },
  words,
}: {
  readonly shown: Drawing;
  readonly drawn: Drawn;
  readonly words: Telling;
}) {
  const { data } = useSheet();
  const tell = teller(words.t, data.shop.language);
  switch (shown) {
    case 'pair':
      return <FrontDrawing view={view.front} tell={tell} uid="dw-front" />;
    case 'gaze':
      return <GazeDrawing view={view.gaze} tell={tell} uid="dw-gaze" />;
    case 'light':
      return <LightDrawing view={view.light} tell={tell} uid="dw-light" />;
    case 'edge':
      if (view.edge) return <EdgeDrawing view={view.edge} tell={tell} uid="dw-edge" />;
      break;
    case 'section':
      if (view.section)
        return (
          <SectionDrawing
            view={view.section}
            tell={tell}
            uid="dw-section"
            comparedAs={compared && optionName(data, compared.kind, compared.id)}
          />
        );
  }
  return <p class="ws-note">{tell.d('noLens')}</p>;
}

/** Chooses what to compare with; what is pointed at in the lists goes before it. */
function Beside() {
  const { t, data, beside } = useSheet();
  const now = useStore(beside);
  const choose = (text: string) => {
    const [kind, id] = text.split(' ');
    const found = LENS_KINDS.find((one) => one === kind);
    beside.set(found && id ? { kind: found, id } : null);
  };
  const lists = {
    design: data.designs,
    material: data.materials,
    tint: data.tints,
    coating: data.coatings,
  };
  return (
    <div class="ws-beside">
      <label for="ws-beside">{t('shown.beside')}</label>
      <select
        id="ws-beside"
        value={now ? `${now.kind} ${now.id}` : ''}
        onChange={({ currentTarget }) => choose(currentTarget.value)}
      >
        <option value="">{t('shown.besideNone')}</option>
        {LENS_KINDS.map((kind) => (
          <optgroup key={kind} label={t(`option.${kind}.legend`)}>
            {lists[kind].map(({ id, name }) => (
              <option key={id} value={`${kind} ${id}`}>
                {name}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
    </div>
  );
}

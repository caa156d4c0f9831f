/** Keeping entries on this device, only when ticked; and forgetting all. */
import { useStore } from '@nanostores/preact';
import { useRef, useState } from 'preact/hooks';
import { forgetAll } from '../configurator/keeping/forgetAll.ts';
import { forget, keep } from '../configurator/keeping.ts';
import { deviceShelf, shelves } from './deviceShelf.ts';
import { KeepTick } from './KeepTick.tsx';
import { isAnythingHeld, openedPair } from './keeping/heldState.ts';
import { useSheet } from './sheet.ts';

/** Uses the part that reads held pairs, which few visitors need. */
function withHeld(use: (held: typeof import('./keeping/held.ts')) => void): void {
  import('./keeping/held.ts').then(use, (error) => console.error(error));
}

export function Keeping() {
  const sheet = useSheet();
  const { t } = sheet;
  const kept = useStore(sheet.kept);
  const dialog = useRef<HTMLDialogElement>(null);
  const [told, tell] = useState<'refused' | 'done' | null>(null);
  const tick = (on: boolean) => {
    const done = on ? keep(deviceShelf(), sheet.frame.id, sheet.entries.get()) : forget(deviceShelf());
    if (done && isAnythingHeld()) withHeld(({ moveAside }) => moveAside(on));
    sheet.kept.set(on && done);
    tell(done ? null : 'refused');
  };
  const forgetEverything = () => {
    sheet.clear();
    openedPair.set(null);
    const held = isAnythingHeld();
    const done = forgetAll(shelves());
    if (held) withHeld(({ countHeld }) => countHeld());
    dialog.current?.close();
    tell(done ? 'done' : 'refused');
  };
  return (
    <section class="ws-part" aria-labelledby="ws-keeping">
      <h3 id="ws-keeping">{t('keeping.legend')}</h3>
      <KeepTick t={t} kept={kept} onTick={tick} />
      <button type="button" class="ws-button" onClick={() => dialog.current?.showModal()}>
        {t('keeping.forget')}
      </button>
      <output class="ws-told">{told && t(`keeping.${told}`)}</output>
      <dialog ref={dialog} class="ws-dialog" aria-labelledby="ws-forget">
        <h4 id="ws-forget">{t('keeping.question')}</h4>
        <p>{t('keeping.questionText')}</p>
        <button type="button" class="ws-button" onClick={forgetEverything}>
          {t('keeping.yes')}
        </button>
        <button type="button" class="ws-button" onClick={() => dialog.current?.close()}>
          {t('keeping.no')}
        </button>
      </dialog>
    </section>
  );
}

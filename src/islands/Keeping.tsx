/** Keeping entries on this device, only when ticked; and forgetting all. */
import { useState } from 'preact/hooks';
import { forget, keep } from '../configurator/keeping.ts';
import { deviceShelf } from './deviceShelf.ts';
import { KeepTick } from './KeepTick.tsx';
import { isAnythingHeld } from './keeping/heldState.ts';
import { useSheet } from './sheet.ts';
import { useStore } from './useStore.ts';

/** Uses the part that reads held pairs, which few visitors need. */
function withHeld(use: (held: typeof import('./keeping/held.ts')) => void): void {
  import('./keeping/held.ts').then(use, (error) => console.error(error));
}

export function Keeping() {
  const sheet = useSheet();
  const { t } = sheet;
  const kept = useStore(sheet.kept);
  const [told, tell] = useState<'refused' | 'done' | 'failed' | null>(null);
  const tick = (on: boolean) => {
    const done = on ? keep(deviceShelf(), sheet.frame.id, sheet.entries.get()) : forget(deviceShelf());
    if (done && isAnythingHeld()) withHeld(({ moveAside }) => moveAside(on));
    sheet.kept.set(on && done);
    tell(done ? null : 'refused');
  };
  const ask = () =>
    import('./keeping/askForget.tsx').then(
      ({ askForget }) => askForget(sheet, tell),
      () => tell('failed'),
    );
  return (
    <section class="ws-part" aria-labelledby="ws-keeping">
      <h3 id="ws-keeping">{t('keeping.legend')}</h3>
      <KeepTick t={t} kept={kept} onTick={tick} />
      <button type="button" class="ws-button" onClick={() => void ask()}>
        {t('keeping.forget')}
      </button>
      <output class="ws-told">{told && t(told === 'failed' ? 'entry.failed' : `keeping.${told}`)}</output>
    </section>
  );
}

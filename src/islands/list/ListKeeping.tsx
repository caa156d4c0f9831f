/** Keeping what was entered on this device, only when ticked, for the worksheets too; and forgetting all. */
import { useState } from 'preact/hooks';
import { forgetAll } from '../../configurator/keeping/forgetAll.ts';
import { forget, keep } from '../../configurator/keeping.ts';
import { deviceShelf, shelves } from '../deviceShelf.ts';
import { KeepTick } from '../KeepTick.tsx';
import { useStore } from '../useStore.ts';
import { useList } from './stores.ts';

/** What is measured in one frame is kept under the frame's name; the list has none. */
export const NO_FRAME = '';

export function ListKeeping() {
  const { t, entries, kept, clear } = useList();
  const ticked = useStore(kept);
  const [told, tell] = useState<'refused' | 'done' | null>(null);
  const tick = (on: boolean) => {
    const done = on ? keep(deviceShelf(), NO_FRAME, entries.get()) : forget(deviceShelf());
    kept.set(on && done);
    tell(done ? null : 'refused');
  };
  const forgetEverything = () => {
    clear();
    kept.set(false);
    tell(forgetAll(shelves()) ? 'done' : 'refused');
  };
  return (
    <div class="fl-keeping">
      <KeepTick t={t} kept={ticked} onTick={tick} />
      <button type="button" class="ws-button" onClick={forgetEverything}>
        {t('keeping.forget')}
      </button>
      <output class="ws-told">{told && t(`keeping.${told}`)}</output>
    </div>
  );
}

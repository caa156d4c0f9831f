/** Keeping what was entered on this device, only when ticked, for the worksheets too; and forgetting all. */
import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import { forget, keep } from '../../configurator/keeping.ts';
import { deviceShelf } from '../deviceShelf.ts';
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
  const forgetAll = () => {
    clear();
    kept.set(false);
    tell(forget(deviceShelf()) ? 'done' : 'refused');
  };
  return (
    <div class="fl-keeping">
      <div class="ws-tick">
        <input
          type="checkbox"
          id="ws-keep"
          checked={ticked}
          onChange={({ currentTarget }) => tick(currentTarget.checked)}
          aria-describedby="ws-keep-text"
        />
        <label for="ws-keep">{t('keeping.keep')}</label>
      </div>
      <p class="ws-note" id="ws-keep-text">
        {t('keeping.keepText')}
      </p>
      <button type="button" class="ws-button" onClick={forgetAll}>
        {t('keeping.forget')}
      </button>
      <output class="ws-told">{told && t(`keeping.${told}`)}</output>
    </div>
  );
}

/** Asks before everything is forgotten: the fields of the page, and all that the browser holds for the shop. */
import { forgetAll } from '../../configurator/keeping/forgetAll.ts';
import type { Worksheet } from '../../configurator/worksheet.ts';
import { shelves } from '../deviceShelf.ts';
import { openDialog } from './Dialog.tsx';
import { countHeld } from './held.ts';
import { isAnythingHeld, openedPair } from './heldState.ts';

/** `tell` hears what came of it; nothing where the visitor keeps it all. */
export function askForget(sheet: Worksheet, tell: (came: 'refused' | 'done') => void): void {
  const { t } = sheet;
  const forgetEverything = () => {
    sheet.clear();
    openedPair.set(null);
    const held = isAnythingHeld();
    const done = forgetAll(shelves());
    if (held) countHeld();
    tell(done ? 'done' : 'refused');
  };
  openDialog({ class: 'ws-dialog', heading: 'ws-forget', modal: true }, (close) => (
    <>
      <h4 id="ws-forget">{t('keeping.question')}</h4>
      <p>{t('keeping.questionText')}</p>
      <button
        type="button"
        class="ws-button"
        onClick={() => {
          forgetEverything();
          close();
        }}
      >
        {t('keeping.yes')}
      </button>
      <button type="button" class="ws-button" onClick={close}>
        {t('keeping.no')}
      </button>
    </>
  ));
}

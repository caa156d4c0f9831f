/** Asks before everything is forgotten: the fields of the page, and all that the browser holds for the shop. */
import { forgetAll } from '../../configurator/keeping/forgetAll.ts';
import type { Worksheet } from '../../configurator/worksheet.ts';
import { shelves } from '../deviceShelf.ts';
import { askFirst } from './askFirst.tsx';
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
  const question = { heading: t('keeping.question'), text: t('keeping.questionText') };
  askFirst({ ...question, yes: t('keeping.yes'), no: t('keeping.no') }, forgetEverything);
}

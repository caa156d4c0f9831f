/** Minds what was typed from the first entry on: leaving the page, links of explanation, the switch of languages. */
import { computed } from 'nanostores';
import { wouldLose } from '../../configurator/keeping/wouldLose.ts';
import type { Worksheet } from '../../configurator/worksheet.ts';
import { askBeforeLeaving } from '../askBeforeLeaving.ts';
import { carryPackage } from '../carryFragment.ts';
import { countHeld, heldChange, heldEntries } from './held.ts';
import { openBeside } from './openBeside.ts';

/** Begins to. */
export function mindLeaving(sheet: Worksheet): void {
  const losing = computed([sheet.entries, sheet.kept, heldChange], (entries, kept) =>
    wouldLose(entries, heldEntries(sheet.frame.id, kept)),
  );
  losing.subscribe(askBeforeLeaving);
  // Other pages change what is held: those of other tabs, and the basket that somebody comes back from.
  for (const sign of ['storage', 'pageshow']) addEventListener(sign, countHeld);
  openBeside(losing, sheet);
  carryPackage(sheet);
}

/** Minds what was typed from the first entry on: leaving the page, links of explanation, the switch of languages. */
import { computed } from 'nanostores';
import { wouldLose } from '../../configurator/keeping/wouldLose.ts';
import type { Worksheet } from '../../configurator/worksheet.ts';
import { askBeforeLeaving } from '../askBeforeLeaving.ts';
import { carryPackage } from '../carryFragment.ts';
import { heldChange, heldEntries } from './held.ts';
import { openBeside } from './openBeside.ts';

/** Begins to. */
export function mindLeaving(sheet: Worksheet): void {
  const losing = computed([sheet.entries, sheet.kept, heldChange], (entries, kept) =>
    wouldLose(entries, heldEntries(sheet.frame.id, kept)),
  );
  losing.subscribe(askBeforeLeaving);
  openBeside(losing, sheet);
  carryPackage(sheet);
}

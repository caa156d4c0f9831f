/** Opens the comparison over the page. */
import type { Worksheet } from '../../configurator/worksheet.ts';
import { Compare } from './Compare.tsx';
import { openDialog } from './Dialog.tsx';
import { addressesOf } from './pageTelling.ts';
import { type PairsEngine, startPairsEngine } from './pairsEngine.ts';
import type { Telling } from './telling.ts';

let engine: PairsEngine | null = null;

/** Shows what is set aside, side by side; the worksheet gives the terms, and may be given a package. */
export function openComparison(sheet: Worksheet, telling: Telling): void {
  engine ??= startPairsEngine(addressesOf(document.getElementById('worksheet-root')).shop);
  const { comparison } = engine;
  openDialog({ class: 'ws-dialog sh-compare', heading: 'sh-compare', modal: true, alone: true }, (close) => (
    <Compare sheet={sheet} telling={telling} ask={comparison} close={close} />
  ));
}

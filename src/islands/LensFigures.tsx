/** The finished lenses, or a word on when there are any. */
import { useSheet } from './sheet.ts';
import { useLater } from './useLater.ts';
import { useStore } from './useStore.ts';

export function LensFigures() {
  const sheet = useSheet();
  const [pair] = useStore(sheet.answer).pairs;
  const any = (pair?.right ?? pair?.left ?? null) !== null;
  const part = useLater(() => import('./LensTable.tsx'), any);
  if (!any) return <p class="ws-note">{sheet.t('ticket.figuresNone')}</p>;
  if (part === 'failed') return <p class="ws-note">{sheet.t('entry.failed')}</p>;
  return part && <part.LensTable />;
}

/** What changed, told to those who hear the page: once typing has paused, and not at each key. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { sentenceOf, totalLabel } from './sentence.ts';
import { useSheet } from './sheet.ts';
import { useFigures } from './useFigures.ts';
import { useStore } from './useStore.ts';

/** Longer than the pause between two keys, ms. */
const PAUSE_MS = 1000;

export function Status() {
  const sheet = useSheet();
  const standing = useStore(sheet.standing);
  const { price } = useStore(sheet.answer);
  const figures = useFigures();
  const [said, setSaid] = useState('');
  const before = useRef<string | null>(null);
  const now = sheet.t('ticket.status', {
    verdict: sentenceOf(sheet, standing),
    label: totalLabel(sheet, standing),
    total: figures.money(price.total),
  });
  useEffect(() => {
    // What the page opens with is read where it stands.
    if (before.current === null || before.current === now) {
      before.current = now;
      return undefined;
    }
    const timer = setTimeout(() => {
      before.current = now;
      setSaid(now);
    }, PAUSE_MS);
    return () => clearTimeout(timer);
  }, [now]);
  return (
    <output class="ws-unseen" aria-live="polite">
      {said}
    </output>
  );
}

/** Parts of a form that few visitors need: their script loads when they are asked for. */
import type { ComponentChild, ComponentType } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { useEntryStores } from '../sheet.ts';
import { useLater } from '../useLater.ts';

interface LaterProps {
  /** Called once, when `wanted` first is true. */
  readonly load: () => Promise<ComponentType>;
  readonly wanted: boolean;
  /** Stands in its place until it is there. */
  readonly meanwhile?: ComponentChild;
}

/** The part while it is wanted, once it has loaded; and a sentence where it does not load. */
export function Later({ load, wanted, meanwhile = null }: LaterProps) {
  const { t } = useEntryStores();
  // Kept in an object: a bare component would be taken for a way to make the next state.
  const part = useLater(() => load().then((is) => ({ Is: is })), wanted);
  if (part === 'failed') return <p class="ws-told ws-fault">{t('entry.failed')}</p>;
  return wanted && part !== null ? <part.Is /> : meanwhile;
}

interface DetailsProps {
  readonly summary: string;
  readonly load: LaterProps['load'];
}

/** The same behind a line that opens it. */
export function LaterDetails({ summary, load }: DetailsProps) {
  const [opened, open] = useState(false);
  const box = useRef<HTMLDetailsElement>(null);
  // It may have been opened before the script was there.
  useEffect(() => {
    if (box.current?.open) open(true);
  }, []);
  return (
    <details ref={box} class="ws-more" onToggle={({ currentTarget }) => currentTarget.open && open(true)}>
      <summary>{summary}</summary>
      <Later load={load} wanted={opened} />
    </details>
  );
}

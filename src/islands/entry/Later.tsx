/** Parts of a form that few visitors need: their script loads when they are asked for. */
import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { useEntryStores } from '../sheet.ts';

interface LaterProps {
  /** Called once, when `wanted` first is true. */
  readonly load: () => Promise<ComponentType>;
  readonly wanted: boolean;
}

/** The part once it has loaded; before that nothing, and a sentence where it does not load. */
export function Later({ load, wanted }: LaterProps) {
  const { t } = useEntryStores();
  const [part, setPart] = useState<{ readonly is: ComponentType } | 'failed' | null>(null);
  useEffect(() => {
    if (!wanted || part !== null) return;
    load().then(
      (is) => setPart({ is }),
      () => setPart('failed'),
    );
  }, [wanted]);
  if (part === 'failed') return <p class="ws-told ws-fault">{t('entry.failed')}</p>;
  return part && <part.is />;
}

interface DetailsProps {
  readonly summary: string;
  readonly load: LaterProps['load'];
}

/** The same behind a line that opens it. */
export function LaterDetails({ summary, load }: DetailsProps) {
  const [opened, open] = useState(false);
  return (
    <details class="ws-more" onToggle={({ currentTarget }) => currentTarget.open && open(true)}>
      <summary>{summary}</summary>
      <Later load={load} wanted={opened} />
    </details>
  );
}

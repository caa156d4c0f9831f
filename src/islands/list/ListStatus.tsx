/** How many frames are left and can be made; what holds for all of them. Told aloud once typing has paused. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { sharedCautions } from '../../configurator/list/card.ts';
import type { FrameListStores } from '../../configurator/list/frameList.ts';
import { useStore } from '../useStore.ts';
import { useList } from './stores.ts';

/** Longer than the pause between two keys, ms. */
const PAUSE_MS = 1000;

export function ListStatus() {
  const list = useList();
  const { told } = list;
  const text = useStatus(list);
  const shared = sharedCautions(useStore(list.answers));
  const failed = useStore(list.progress) === 'failed';
  return (
    <div class="fl-status">
      {failed && (
        <p class="ws-failed" role="alert">
          {told('failed')}
        </p>
      )}
      <p class="fl-count">{text}</p>
      {shared.length > 0 && (
        <>
          <p class="ws-head">{told('shared')}</p>
          <ul class="ws-list">
            {shared.map(({ message }) => (
              <li key={message}>{message}</li>
            ))}
          </ul>
        </>
      )}
      <output class="ws-unseen" aria-live="polite">
        {useSettled(text)}
      </output>
    </div>
  );
}

function useStatus({ told, facts, shown, answers, progress }: FrameListStores): string {
  const left = useStore(shown);
  const known = useStore(answers);
  const stage = useStore(progress);
  const count = facts.length;
  if (stage === 'judging') return told('status.judging', { count });
  if (left.length === 0) return told('status.none');
  const able = left.filter(({ id }) => (known.get(id)?.verdict ?? 'refused') !== 'refused').length;
  return told(stage === 'done' ? 'status.judged' : 'status.plain', { shown: left.length, count, able });
}

/** A text once it has stood for a moment; empty until it first changes. */
function useSettled(text: string): string {
  const [said, setSaid] = useState('');
  const before = useRef(text);
  useEffect(() => {
    if (before.current === text) return undefined;
    const timer = setTimeout(() => {
      before.current = text;
      setSaid(text);
    }, PAUSE_MS);
    return () => clearTimeout(timer);
  }, [text]);
  return said;
}

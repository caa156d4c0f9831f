/** Whether what a page holds is kept, and forgetting everything that the browser holds for the shop. */
import type { ComponentChildren } from 'preact';
import { forgetAll } from '../../configurator/keeping/forgetAll.ts';
import { shelves } from '../deviceShelf.ts';
import { askFirst } from './askFirst.tsx';
import type { Telling } from './telling.ts';

interface Props {
  /** Of the tick. */
  readonly id: string;
  readonly label: string;
  /** What keeping means here, or that the browser refuses it. */
  readonly text: string;
  readonly kept: boolean;
  readonly keep: (wanted: boolean) => void;
  /** Empties the page itself. */
  readonly clear: () => void;
  readonly say: Telling['say'];
  readonly tell: (text: string) => void;
  readonly children?: ComponentChildren;
}

export function KeepAndForget({ id, label, text, kept, keep, clear, say, tell, children }: Props) {
  const forget = () => {
    const done = forgetAll(shelves());
    clear();
    tell(say(done ? 'basket.forgotten' : 'basket.refused'));
  };
  const ask = () => {
    const question = { heading: say('basket.question'), text: say('basket.questionText') };
    askFirst({ ...question, yes: say('basket.yes'), no: say('basket.no') }, forget);
  };
  return (
    <section class="bk-keeping" aria-label={label}>
      <div class="ws-tick">
        <input
          type="checkbox"
          id={id}
          checked={kept}
          onChange={({ currentTarget }) => keep(currentTarget.checked)}
          aria-describedby={`${id}-text`}
        />
        <label for={id}>{label}</label>
      </div>
      <p class="ws-note" id={`${id}-text`}>
        {text}
      </p>
      {children}
      <button type="button" class="ws-button" onClick={ask}>
        {say('basket.forget')}
      </button>
    </section>
  );
}

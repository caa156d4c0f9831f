/** A button for what cannot be undone: it asks once more in its place. */
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { useBench } from './useBench.ts';

interface Props {
  readonly label: string;
  readonly question: string;
  readonly yes: string;
  readonly onYes: () => void;
}

export function Confirm({ label, question, yes, onYes }: Props) {
  const { t } = useBench();
  const [asks, setAsks] = useState(false);
  const opener = useRef<HTMLButtonElement>(null);
  const yesButton = useRef<HTMLButtonElement>(null);
  useLayoutEffect(() => {
    if (asks) yesButton.current?.focus();
  }, [asks]);
  const close = () => {
    setAsks(false);
    requestAnimationFrame(() => opener.current?.focus());
  };
  if (!asks)
    return (
      <button ref={opener} class="ws-button" type="button" onClick={() => setAsks(true)}>
        {label}
      </button>
    );
  return (
    <fieldset class="wr-confirm">
      <legend>{question}</legend>
      <button
        ref={yesButton}
        class="ws-button"
        type="button"
        onClick={() => {
          close();
          onYes();
        }}
      >
        {yes}
      </button>
      <button class="ws-button" type="button" onClick={close}>
        {t('no')}
      </button>
    </fieldset>
  );
}

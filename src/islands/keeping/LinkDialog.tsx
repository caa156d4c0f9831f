/** A link to the pair: without the prescription unless the shopper ticks it in. */
import { useId, useRef, useState } from 'preact/hooks';
import { writeLink } from '../../configurator/keeping/link.ts';
import type { HeldPair } from '../../configurator/keeping/parts.ts';
import { openDialog } from './Dialog.tsx';
import type { Telling } from './telling.ts';

/** Opens the dialog for a pair of this page's frame. */
export function openLink(telling: Telling, pair: HeldPair): void {
  openDialog({ class: 'ws-dialog sh-link', heading: 'sh-link', modal: true }, (close) => (
    <LinkDialog telling={telling} pair={pair} close={close} />
  ));
}

interface Props {
  readonly telling: Telling;
  readonly pair: HeldPair;
  readonly close: () => void;
}

function LinkDialog({ telling: { say }, pair, close }: Props) {
  const [personal, setPersonal] = useState(false);
  const [told, setTold] = useState('');
  const box = useRef<HTMLTextAreaElement>(null);
  const id = useId();
  const address = `${location.origin}${location.pathname}#${writeLink(pair, personal)}`;
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(address);
      setTold(say('link.copied'));
    } catch {
      box.current?.select();
      setTold(say('link.notCopied'));
    }
  };
  return (
    <>
      <h2 id="sh-link">{say('link.title')}</h2>
      <p>{say('link.text')}</p>
      <div class="ws-tick">
        <input
          type="checkbox"
          id={`${id}-personal`}
          checked={personal}
          onChange={({ currentTarget }) => {
            setPersonal(currentTarget.checked);
            setTold('');
          }}
          aria-describedby={`${id}-text`}
        />
        <label for={`${id}-personal`}>{say('link.personal')}</label>
      </div>
      <p class="ws-note" id={`${id}-text`}>
        {say('link.personalText')}
      </p>
      <label class="sh-label" for={`${id}-address`}>
        {say('link.label')}
      </label>
      <textarea
        ref={box}
        id={`${id}-address`}
        class="sh-address"
        rows={4}
        readOnly
        spellcheck={false}
        value={address}
      />
      <button type="button" class="ws-button" onClick={() => void copy()}>
        {say('link.copy')}
      </button>
      <button type="button" class="ws-button" onClick={close}>
        {say('link.close')}
      </button>
      <output class="ws-told">{told}</output>
    </>
  );
}

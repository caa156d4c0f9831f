/** Asks before what cannot be taken back. */
import { openDialog } from './Dialog.tsx';

interface Question {
  readonly heading: string;
  readonly text: string;
  readonly yes: string;
  readonly no: string;
}

/** Does it once the shopper says so. */
export function askFirst({ heading, text, yes, no }: Question, act: () => void): void {
  openDialog({ class: 'ws-dialog', heading: 'ask-first', modal: true }, (close) => (
    <>
      <h2 id="ask-first">{heading}</h2>
      <p>{text}</p>
      <button
        type="button"
        class="ws-button"
        onClick={() => {
          act();
          close();
        }}
      >
        {yes}
      </button>
      <button type="button" class="ws-button" onClick={close}>
        {no}
      </button>
    </>
  ));
}

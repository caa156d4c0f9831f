/** Whether the basket is kept on the device; and forgetting everything. */
import { useStore } from '@nanostores/preact';
import type { BasketStores } from '../../configurator/basket/basketStores.ts';
import { forgetAll } from '../../configurator/keeping/forgetAll.ts';
import { shelves } from '../deviceShelf.ts';
import { openDialog } from '../keeping/Dialog.tsx';
import type { Telling } from '../keeping/telling.ts';

interface Props {
  readonly stores: BasketStores;
  readonly telling: Telling;
  readonly tell: (text: string) => void;
}

export function BasketKeeping({ stores, telling: { say, t }, tell }: Props) {
  const kept = useStore(stores.onDevice);
  const refused = useStore(stores.refused);
  const forget = () => {
    const done = forgetAll(shelves());
    stores.clear();
    tell(say(done ? 'basket.forgotten' : 'basket.refused'));
  };
  const ask = () =>
    openDialog({ class: 'ws-dialog', heading: 'bk-forget', modal: true }, (close) => (
      <>
        <h2 id="bk-forget">{say('basket.question')}</h2>
        <p>{say('basket.questionText')}</p>
        <button
          type="button"
          class="ws-button"
          onClick={() => {
            forget();
            close();
          }}
        >
          {say('basket.yes')}
        </button>
        <button type="button" class="ws-button" onClick={close}>
          {say('basket.no')}
        </button>
      </>
    ));
  return (
    <section class="bk-keeping" aria-label={say('basket.keep')}>
      <div class="ws-tick">
        <input
          type="checkbox"
          id="bk-keep"
          checked={kept}
          onChange={({ currentTarget }) => stores.keep(currentTarget.checked)}
          aria-describedby="bk-keep-text"
        />
        <label for="bk-keep">{say('basket.keep')}</label>
      </div>
      <p class="ws-note" id="bk-keep-text">
        {refused ? say('basket.refused') : say('basket.keepText')}
      </p>
      <p class="ws-note">{t('ticket.safety')}</p>
      <button type="button" class="ws-button" onClick={ask}>
        {say('basket.forget')}
      </button>
    </section>
  );
}

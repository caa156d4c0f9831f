/** Whether what is typed is kept in the tab; and forgetting everything. */
import { useStore } from '@nanostores/preact';
import { forgetAll } from '../../configurator/keeping/forgetAll.ts';
import { shelves } from '../deviceShelf.ts';
import { askFirst } from './askFirst.tsx';
import { useOrdering } from './ordering.ts';

export function OrderKeeping({ tell }: { readonly tell: (text: string) => void }) {
  const { stores, telling, o } = useOrdering();
  const { say } = telling;
  const kept = useStore(stores.form.kept);
  const refused = useStore(stores.form.refused);
  const forget = () => {
    const done = forgetAll(shelves());
    stores.clear();
    tell(say(done ? 'basket.forgotten' : 'basket.refused'));
  };
  const ask = () => {
    const question = { heading: say('basket.question'), text: say('basket.questionText') };
    askFirst({ ...question, yes: say('basket.yes'), no: say('basket.no') }, forget);
  };
  return (
    <section class="bk-keeping" aria-label={o('keep')}>
      <div class="ws-tick">
        <input
          type="checkbox"
          id="or-keep"
          checked={kept}
          onChange={({ currentTarget }) => stores.form.keep(currentTarget.checked)}
          aria-describedby="or-keep-text"
        />
        <label for="or-keep">{o('keep')}</label>
      </div>
      <p class="ws-note" id="or-keep-text">
        {refused ? o('keepRefused') : o('keepText')}
      </p>
      <button type="button" class="ws-button" onClick={ask}>
        {say('basket.forget')}
      </button>
    </section>
  );
}

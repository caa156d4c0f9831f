/** Where the order goes and on what terms, the sum of each pair, what is charged once, and the total. */
import type { Shop } from '../../catalogue/shop.ts';
import { writeDigits } from '../../catalogue/words.ts';
import type { Answered, BasketStores } from '../../configurator/basket/basketStores.ts';
import type { Telling } from '../keeping/telling.ts';
import { LinesTable } from '../PriceLines.tsx';
import { Entering } from '../sheet.ts';
import { TermsFields } from '../Terms.tsx';
import { useStore } from '../useStore.ts';
import { orderLines } from './orderLines.ts';

interface Props {
  readonly stores: BasketStores;
  readonly telling: Telling;
  readonly shop: Pick<Shop, 'language' | 'destination' | 'places' | 'shipping' | 'exemptions'>;
  readonly answered: Answered;
}

export function WholePrice({ stores, telling, shop, answered: { answer } }: Props) {
  const { say, t, figures, words } = telling;
  const { price, pairs } = answer;
  const faults = useStore(stores.faults).filter(({ field }) => field === null);
  const entering = {
    t,
    digits: (text: string) => writeDigits(words, text),
    entries: stores.terms,
    shownFaults: stores.faults,
    enter: stores.enterTerm,
    leave: () => undefined,
  };
  return (
    <>
      <Entering.Provider value={entering}>
        <fieldset class="bk-terms">
          <legend class="ws-head">{t('terms.legend')}</legend>
          <TermsFields shop={shop} codes={price?.codes ?? []} />
        </fieldset>
      </Entering.Provider>
      {faults.map(({ message, expected }) => (
        <p class="ws-fault" key={message}>
          {t('fault.expected', { message, expected })}
        </p>
      ))}
      {price === null ? (
        <p class="ws-note">{say('basket.noTotal')}</p>
      ) : (
        <LinesTable
          caption={say('basket.orderPrice')}
          lines={orderLines(telling, price, pairs)}
          totalLabel={say('basket.total')}
          total={figures.money(price.total)}
          money={figures.money}
        />
      )}
      <output class="ws-unseen" aria-live="polite">
        {price !== null && say('basket.saidTotal', { total: figures.money(price.total) })}
      </output>
    </>
  );
}

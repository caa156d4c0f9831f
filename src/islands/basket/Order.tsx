/** The whole order: where to and on what terms, the sum of each pair, what is charged once, and the total. */
import { useStore } from '@nanostores/preact';
import type { Shop } from '../../catalogue/shop.ts';
import type { PairStanding } from '../../configurator/basket/answerBasket.ts';
import type { Answered, BasketStores } from '../../configurator/basket/basketStores.ts';
import { linesOf } from '../../configurator/basket/linesOf.ts';
import type { QuoteLine } from '../../pricing/line.ts';
import type { PriceAnswer } from '../../quote/answer.ts';
import type { Telling } from '../keeping/telling.ts';
import { LinesTable } from '../PriceLines.tsx';
import { Entering } from '../sheet.ts';
import { TermsFields } from '../Terms.tsx';

/** The part of the shop that the page itself speaks of. */
export type BasketShop = Pick<
  Shop,
  'name' | 'language' | 'currency' | 'currencyDigits' | 'timeZone' | 'destination' | 'shipping' | 'exemptions'
>;

interface Props {
  readonly stores: BasketStores;
  readonly telling: Telling;
  readonly shop: BasketShop;
  readonly answered: Answered;
}

export function Order({ stores, telling, shop, answered: { answer } }: Props) {
  const { say, t, figures } = telling;
  const { price, pairs } = answer;
  const faults = useStore(stores.faults).filter(({ field }) => field === null);
  const entering = {
    t,
    entries: stores.terms,
    shownFaults: stores.faults,
    enter: stores.enterTerm,
    leave: () => undefined,
  };
  return (
    <section class="bk-order" aria-labelledby="bk-order">
      <h2 id="bk-order">{say('basket.order')}</h2>
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
    </section>
  );
}

/** One line a pair with its sum, then the lines of the order as a whole. */
function orderLines(
  { say }: Telling,
  price: PriceAnswer,
  pairs: readonly (PairStanding | null)[],
): readonly QuoteLine[] {
  const ofPairs = pairs.flatMap((pair, index): QuoteLine[] => {
    if (pair === null) return [];
    const model = pair.names.model || say('basket.ownFrame');
    return [
      {
        kind: 'frame',
        pair: pair.at,
        label: say('basket.pair', { number: index + 1, model }),
        amount: linesOf(price, pair.at).sumMinor,
        source: `pair/${pair.id}`,
      },
    ];
  });
  return [...ofPairs, ...linesOf(price, null).lines];
}

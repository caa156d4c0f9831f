/** What a card of the list says once its frame was judged. */
import type { Card } from '../../configurator/list/card.ts';
import type { FrameListStores } from '../../configurator/list/frameList.ts';
import { formatMoney } from '../../money/format.ts';
import { Sign } from '../Mark.tsx';

interface Props {
  readonly card: Card;
  readonly stores: FrameListStores;
}

export function CardAnswer({ card, stores: { told, title, shop } }: Props) {
  const { mark, verdict, reason, mind, figures } = card;
  const { currency, currencyDigits, language } = shop;
  const mm = new Intl.NumberFormat(language, { minimumFractionDigits: 1, maximumFractionDigits: 1 });
  return (
    <>
      <p class={`ws-mark ws-${mark}`}>
        <Sign kind={mark} /> {told(`card.${verdict}`)}
      </p>
      {figures && (
        <dl class="card-facts">
          {figures.thickestMm !== null && (
            <div>
              <dt class="label">{told('card.edge')}</dt>{' '}
              <dd>{told('card.mm', { mm: mm.format(figures.thickestMm) })}</dd>
            </div>
          )}
          {figures.totalMinor !== null && (
            <div>
              <dt class="label">{told('card.pair')}</dt>{' '}
              <dd>
                {told('card.from', {
                  price: formatMoney(figures.totalMinor, currency, currencyDigits, language),
                })}
              </dd>
            </div>
          )}
          <div>
            <dt class="label">{told('card.lenses')}</dt> <dd>{figures.lenses}</dd>
          </div>
          <div>
            <dt class="label">{told('card.size')}</dt> <dd>{figures.size}</dd>
          </div>
        </dl>
      )}
      {reason !== null && <p class="note">{reason}</p>}
      {mind.length > 0 && (
        <p class="note">{told('card.mind', { titles: mind.map((rule) => title(rule)).join(', ') })}</p>
      )}
    </>
  );
}

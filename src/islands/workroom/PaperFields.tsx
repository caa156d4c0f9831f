/** What the owner adds to the papers: paid, parcel, markings, a word to the supplier. */
import { Fragment } from 'preact';
import { type Entering, Entry } from './Entry.tsx';
import type { OrderField } from './paperEntries.ts';
import { useBench } from './useBench.ts';

interface Props extends Entering {
  /** How many pairs the order has. */
  readonly count: number;
  readonly wrong: readonly OrderField[];
}

export function PaperFields({ draft, typed, enter, count, wrong }: Props) {
  const { t, offer } = useBench();
  const entering = { typed, enter };
  const { currency, currencyDigits } = offer.shop;
  const sample = (19).toFixed(currencyDigits);
  const order = (field: OrderField, type: 'text' | 'date' = 'text') => (
    <Entry
      {...entering}
      field={field}
      type={type}
      label={t(`papers.${field}`, { currency })}
      wrong={
        wrong.includes(field)
          ? t(type === 'date' ? 'papers.wrongDay' : 'papers.wrongAmount', { sample })
          : undefined
      }
    />
  );
  const ofPair = (pair: number, key: string) =>
    count > 1 ? t('papers.ofPair', { pair: pair + 1, what: t(key) }) : t(key);
  return (
    <>
      <div class="wr-form">
        {order('paidAmount')}
        {order('paidOn', 'date')}
        {order('paidHow')}
        {order('carrier')}
        {order('parcelNumber')}
        {order('parcelOn', 'date')}
        {Array.from({ length: count }, (_, pair) => (
          <Fragment key={pair}>
            <Entry
              {...entering}
              field={`${pair}.supplierRemark`}
              label={ofPair(pair, 'papers.supplierRemark')}
              wide
            />
            <Entry {...entering} field={`${pair}.markings`} label={ofPair(pair, 'papers.markings')} wide />
          </Fragment>
        ))}
      </div>
      <label class="wr-tick">
        <input
          type="checkbox"
          checked={draft['honour'] === 'yes'}
          onChange={({ currentTarget }) => enter('honour', currentTarget.checked ? 'yes' : '')}
        />
        {t('papers.honour')}
      </label>
      <p class="ws-note">{t('papers.memory')}</p>
      {offer.workroom.billing.length > 0 && <p class="ws-note">{t('papers.codes')}</p>}
    </>
  );
}

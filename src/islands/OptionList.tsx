/** All options of one kind side by side: a row each, with what it gains and costs in this frame, best and worst told. */
import type { ReadableAtom } from 'nanostores';
import { useState } from 'preact/hooks';
import { pageHref } from '../catalogue/languages.ts';
import { optionRows } from '../configurator/optionRows.ts';
import { type TradeColumn, tradeOf } from '../configurator/tradeColumns.ts';
import type { ReportedChoice } from '../quote/options.ts';
import { OptionEntry } from './OptionEntry.tsx';
import { useSheet } from './sheet.ts';
import { useStore } from './useStore.ts';
import { useTradeFigures } from './useTradeFigures.ts';

/** On a narrow screen the chosen one of these comes alone: there are many, or few ask for another. */
const FOLDED: readonly ReportedChoice[] = ['blank', 'tint'];

export function OptionList({ kind }: { readonly kind: ReportedChoice }) {
  const sheet = useSheet();
  const { t, data, pointed } = sheet;
  const rows = optionRows(data, kind, useStore(sheet.reported[kind]));
  const chosen = useStore(sheet.chosen[kind] as ReadableAtom<string | null>);
  const { columns, alike } = tradeOf(rows);
  const figure = useTradeFigures();
  // On a narrow screen the first figures come alone; on a wide one all are there and the button is not.
  const [whole, setWhole] = useState(false);
  // What a narrow screen lays the table out by.
  const has = (wanted: TradeColumn, then: string) => (columns.some(({ key }) => key === wanted) ? then : '');
  const folds = FOLDED.includes(kind);
  const more = folds ? 'all' : 'whole';
  const unit = (key: TradeColumn) => (key === 'price' ? '' : t(`trade.unit.${key}`));
  return (
    <fieldset class={whole ? 'ws-options' : `ws-options ws-brief${folds ? ' ws-folds' : ''}`}>
      <legend>{t(`option.${kind}.legend`)}</legend>
      <button
        type="button"
        class="ws-whole"
        aria-expanded={whole}
        aria-label={t(`trade.${whole ? 'less' : more}Of`, {
          kind: t(`option.${kind}.legend`),
          count: rows.length,
        })}
        onClick={() => setWhole(!whole)}
      >
        {t(`trade.${whole ? 'less' : more}`, { count: rows.length })}
      </button>
      <p class="ws-lead">
        {t(`option.${kind}.text`)}{' '}
        {kind !== 'blank' && (
          <a href={pageHref(data.shop, `/lenses/#${kind}s`)}>{t(`option.${kind}.more`)}</a>
        )}
      </p>
      {/* Wider than a telephone: it scrolls inside, the names stay in sight. */}
      <div class="ws-scroll" onPointerLeave={() => pointed.set(null)}>
        <table class={`ws-trade${has('thickest', ' ws-edges')}${has('mass', ' ws-masses')}`}>
          <thead>
            <tr>
              <th scope="col">{t('trade.option')}</th>
              {columns.map(({ key }) => (
                <th key={key} scope="col" class={`ws-col-${key}`}>
                  {t(`trade.${key}`)}
                  {key !== 'price' && `, ${unit(key)}`}
                </th>
              ))}
            </tr>
          </thead>
          {rows.map((row, at) => (
            <OptionEntry
              key={row.id}
              kind={kind}
              row={row}
              chosen={row.id === chosen}
              cells={columns.map(({ key, cells }) => ({
                key,
                cell: cells[at] ?? { values: [], rank: null },
              }))}
            />
          ))}
        </table>
      </div>
      {columns.some(({ cells }) => cells.some(({ rank }) => rank !== null)) &&
        rows.some(({ mark }) => mark === 'refused') && <p class="ws-note ws-extra">{t('trade.ranked')}</p>}
      {alike.length > 0 && (
        <p class="ws-note ws-extra">
          {t('trade.alike', {
            figures: alike
              .map(({ key, values }) => `${t(`trade.${key}`)} ${figure(key, values)}\u00a0${unit(key)}`)
              .join(t('semicolon')),
          })}
        </p>
      )}
    </fieldset>
  );
}

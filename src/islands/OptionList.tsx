/** All options of one kind side by side: a row each, with what it gains and costs in this frame, best and worst told. */
import { useStore } from '@nanostores/preact';
import type { ReadableAtom } from 'nanostores';
import { pageHref } from '../catalogue/languages.ts';
import { optionRows } from '../configurator/optionRows.ts';
import { type TradeColumn, tradeOf } from '../configurator/tradeColumns.ts';
import type { ReportedChoice } from '../quote/options.ts';
import { OptionEntry } from './OptionEntry.tsx';
import { useSheet } from './sheet.ts';
import { useTradeFigures } from './useTradeFigures.ts';

export function OptionList({ kind }: { readonly kind: ReportedChoice }) {
  const sheet = useSheet();
  const { t, data, pointed } = sheet;
  const rows = optionRows(data, kind, useStore(sheet.reported[kind]));
  const chosen = useStore(sheet.chosen[kind] as ReadableAtom<string | null>);
  const { columns, alike } = tradeOf(rows);
  const figure = useTradeFigures();
  const unit = (key: TradeColumn) => (key === 'price' ? '' : t(`trade.unit.${key}`));
  return (
    <fieldset class="ws-options">
      <legend>{t(`option.${kind}.legend`)}</legend>
      <p class="ws-lead">
        {t(`option.${kind}.text`)}{' '}
        {kind !== 'blank' && (
          <a href={pageHref(data.shop, `/lenses/#${kind}s`)}>{t(`option.${kind}.more`)}</a>
        )}
      </p>
      {/* Wider than a telephone: it scrolls inside, the names stay in sight. */}
      <div class="ws-scroll" onPointerLeave={() => pointed.set(null)}>
        <table class="ws-trade">
          <thead>
            <tr>
              <th scope="col">{t('trade.option')}</th>
              {columns.map(({ key }) => (
                <th key={key} scope="col">
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
      {alike.length > 0 && (
        <p class="ws-note">
          {t('trade.alike', {
            figures: alike
              .map(({ key, values }) => `${t(`trade.${key}`)} ${figure(key, values)} ${unit(key)}`)
              .join('; '),
          })}
        </p>
      )}
    </fieldset>
  );
}

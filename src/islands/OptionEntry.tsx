/** One option: its radio button and figures in a row, and below them what is to be said of it. */
import { pageHref } from '../catalogue/languages.ts';
import type { OptionRow } from '../configurator/optionRows.ts';
import type { Cell, TradeColumn } from '../configurator/tradeColumns.ts';
import type { ReportedChoice } from '../quote/options.ts';
import { Mark, Sign } from './Mark.tsx';
import { idOf, useSheet } from './sheet.ts';
import { useFigures } from './useFigures.ts';
import { useTradeFigures } from './useTradeFigures.ts';

interface Props {
  readonly kind: ReportedChoice;
  readonly row: OptionRow;
  readonly chosen: boolean;
  readonly cells: readonly { readonly key: TradeColumn; readonly cell: Cell }[];
}

export function OptionEntry({ kind, row, chosen, cells }: Props) {
  const { t, enter, pointed } = useSheet();
  const figure = useTradeFigures();
  const id = `${idOf(kind)}-${row.id}`;
  return (
    <tbody
      class={`ws-option ws-is-${row.mark}${chosen ? ' ws-chosen' : ''}`}
      onPointerEnter={() => pointed.set({ kind, id: row.id })}
    >
      <tr>
        <th scope="row">
          <div class="ws-pick">
            <input
              type="radio"
              id={id}
              name={kind}
              value={row.id}
              checked={chosen}
              onChange={() => enter(kind, row.id)}
              aria-describedby={`${id}-mark`}
            />
            <label for={id}>
              <Chip colours={row.colours} />
              {row.name}
              {row.mark === 'fits' && (
                <span class="ws-fits-sign">
                  {' '}
                  <Sign kind="fits" />
                </span>
              )}
            </label>
          </div>
        </th>
        {cells.map(({ key, cell: { values, rank } }) => (
          <td key={key} class={rank ? `ws-col-${key} ws-${rank}` : `ws-col-${key}`}>
            {figure(key, values)}
            {rank && <span class="ws-rank">{t(`trade.${rank}`)}</span>}
          </td>
        ))}
      </tr>
      <tr class="ws-said">
        <td colSpan={cells.length + 1}>
          <Said kind={kind} row={row} id={`${id}-mark`} />
        </td>
      </tr>
    </tbody>
  );
}

function Said({ kind, row, id }: Pick<Props, 'kind' | 'row'> & { readonly id: string }) {
  const { t, data } = useSheet();
  const states = useStates()(row);
  return (
    <p class="ws-said-in" id={id}>
      {(row.mark !== 'open' || row.needs.length > 0) && <Mark kind={row.mark} />}{' '}
      {[...row.reasons, ...row.needs].map((reason) => (
        <span class="ws-reason" key={reason}>
          {reason}{' '}
        </span>
      ))}
      {row.minds.length > 0 && `${t('option.minds', { titles: row.minds.join(', ') })} `}
      <span class="ws-extra">
        {row.ours.length > 0 &&
          `${t('ticket.named', { level: t('ticket.ours'), title: row.ours.join(' ') })} `}
        {row.excludes && `${row.excludes} `}
        {row.claim && <span class="ws-claim">{`${row.claim} `}</span>}
        {states && `${states} `}
        {row.summary}{' '}
        {kind !== 'blank' && (
          <a href={pageHref(data.shop, `/lenses/${kind}s/${row.id}/`)}>
            {t('trade.read')}
            <span class="ws-unseen"> {row.name}</span>
          </a>
        )}
      </span>
    </p>
  );
}

/** Light in each state that the shop declares; null where there is one only. */
function useStates(): (row: OptionRow) => string | null {
  const { t } = useSheet();
  const { percent } = useFigures();
  return ({ states, tradeOff }) => {
    const lights = tradeOff?.lightPercents ?? [];
    if (states.length === 0 || lights.length !== states.length) return null;
    return t('trade.states', {
      states: states.map((name, i) => `${name} ${percent(lights[i] ?? 0)}`).join(t('semicolon')),
    });
  };
}

/** The colours of a tint: its lightest and darkest state, corner to corner. */
function Chip({ colours }: { readonly colours: readonly string[] }) {
  const [first, ...more] = colours;
  if (first === undefined) return null;
  return (
    <svg class="ws-chip" viewBox="0 0 20 20" aria-hidden="true">
      <path d="M1 1h18v18H1z" fill={first} />
      {more.length > 0 && <path d="M19 1v18H1z" fill={more.at(-1)} />}
    </svg>
  );
}

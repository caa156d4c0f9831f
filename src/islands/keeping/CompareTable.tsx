/** The table of a comparison: a column a package. The name of a row stands above it, so that columns fit a telephone. */
import type { ComponentChildren } from 'preact';
import type { ComparedPackage } from '../../configurator/basket/answerComparison.ts';
import { figureRows } from './compareRows.tsx';
import { PairNamesTold } from './PairNamesTold.tsx';
import { StandingTold, VerdictTold } from './StandingTold.tsx';
import type { Telling } from './telling.ts';

/** What the packages are called by: their columns' letters. */
const LETTERS = ['A', 'B', 'C'] as const;

type Package = ComparedPackage | null;

interface Props {
  readonly telling: Telling;
  readonly packages: readonly Package[];
  /** Whether a package is what stands on the worksheet now. */
  readonly present: readonly boolean[];
  readonly onUse: (at: number) => void;
  readonly onTakeAway: (at: number) => void;
}

export function CompareTable({ telling, packages, present, onUse, onTakeAway }: Props) {
  const { say, t, figures } = telling;
  const none = t('figure.none');
  const row = (key: string, cell: (one: ComparedPackage) => ComponentChildren) => (
    <Rows telling={telling} name={key} cells={packages.map((one) => (one === null ? none : cell(one)))} />
  );
  return (
    <table class="sh-table" data-columns={packages.length}>
      <thead class="sh-head">
        <tr>
          {packages.map((one, at) => (
            <th key={LETTERS[at]} scope="col">
              {say('compare.package', { letter: LETTERS[at] ?? '', model: modelOf(one, telling) })}
              {present[at] && <span class="sh-now">{say('compare.now')}</span>}
            </th>
          ))}
        </tr>
      </thead>
      {row('verdict', ({ standing }) => (
        <VerdictTold telling={telling} standing={standing} />
      ))}
      {row('choices', ({ names, notHad }) => (
        <PairNamesTold telling={telling} names={names} notHad={notHad} />
      ))}
      {figureRows(telling, packages).map(({ key, cells }) => (
        <Rows
          key={key}
          telling={telling}
          name={key}
          cells={cells.map(({ text, side }) => (
            <>
              {text ?? none} {side && <span class={`sh-side sh-${side}`}>{say(`compare.${side}`)}</span>}
            </>
          ))}
        />
      ))}
      {row('price', ({ price }) =>
        price === null ? (
          say('compare.noPrice')
        ) : (
          <ul class="sh-lines">
            {price.lines.map(({ label, amount, kind, source }) => (
              <li key={`${kind} ${source} ${label}`}>
                {label} <span class="sh-amount">{figures.money(amount)}</span>
              </li>
            ))}
          </ul>
        ),
      )}
      {row('findings', ({ standing }) => (
        <StandingTold telling={telling} standing={standing} brief />
      ))}
      <tbody class="sh-choose">
        <tr>
          {packages.map((one, at) => {
            const letter = LETTERS[at] ?? '';
            return (
              <td key={letter}>
                {one && !present[at] && (
                  <button
                    type="button"
                    class="ws-button"
                    aria-label={say('compare.useLabel', { letter })}
                    onClick={() => onUse(at)}
                  >
                    {say('compare.use')}
                  </button>
                )}
                <button
                  type="button"
                  class="ws-button"
                  aria-label={say('compare.removeLabel', { letter })}
                  onClick={() => onTakeAway(at)}
                >
                  {say('compare.remove')}
                </button>
              </td>
            );
          })}
        </tr>
      </tbody>
    </table>
  );
}

const modelOf = (one: Package, { say }: Telling): string =>
  one === null ? say('compare.gone') : one.names.model || say('basket.ownFrame');

interface RowsProps {
  readonly telling: Telling;
  readonly name: string;
  readonly cells: readonly ComponentChildren[];
}

function Rows({ telling: { say }, name, cells }: RowsProps) {
  return (
    <tbody>
      <tr class="sh-name">
        <th scope="rowgroup" colSpan={cells.length}>
          {say(`compare.${name}`)}
        </th>
      </tr>
      <tr>
        {cells.map((cell, at) => (
          <td key={LETTERS[at]}>{cell}</td>
        ))}
      </tr>
    </tbody>
  );
}

/** All options of one kind, each with its mark, reasons, figures and what it changes in the total. */
import { useStore } from '@nanostores/preact';
import type { ReadableAtom } from 'nanostores';
import { optionRows, type OptionRow as Row, tellingColumns } from '../configurator/optionRows.ts';
import type { LensChoice } from '../quote/options.ts';
import { Mark } from './Mark.tsx';
import { idOf, useSheet } from './sheet.ts';
import { useFigures } from './useFigures.ts';

export function OptionList({ kind }: { readonly kind: LensChoice }) {
  const sheet = useSheet();
  const { t, data } = sheet;
  const rows = optionRows(data, kind, useStore(sheet.reports)[kind]);
  const chosen = useStore(sheet.chosen[kind] as ReadableAtom<string | null>);
  const columns = tellingColumns(rows);
  return (
    <fieldset class="ws-options">
      <legend>{t(`option.${kind}.legend`)}</legend>
      <p class="ws-lead">
        {t(`option.${kind}.text`)} <a href={`/lenses/#${kind}s`}>{t(`option.${kind}.more`)}</a>
      </p>
      <Heads kind={kind} columns={columns} />
      {rows.map((row) => (
        <div class="ws-option" key={row.id}>
          <OptionChoice kind={kind} row={row} chosen={row.id === chosen} />
          <RowFigures kind={kind} row={row} chosen={row.id === chosen} columns={columns} />
        </div>
      ))}
    </fieldset>
  );
}

/** Heads of the columns where they stand side by side; each figure is named in its row for those who hear it. */
function Heads({ kind, columns }: Pick<FiguresProps, 'kind' | 'columns'>) {
  const { t } = useSheet();
  return (
    <div class="ws-heads" aria-hidden="true">
      {columns.thickest && <span>{t('option.thickest')}</span>}
      {columns.shares && <span>{t(kind === 'tint' ? 'option.light' : 'option.reflects')}</span>}
      {columns.mass && <span>{t('option.mass')}</span>}
      <span>{t('option.difference')}</span>
    </div>
  );
}

interface ChoiceProps {
  readonly kind: LensChoice;
  readonly row: Row;
  readonly chosen: boolean;
}

function OptionChoice({ kind, row, chosen }: ChoiceProps) {
  const { t, enter } = useSheet();
  const id = `${idOf(kind)}-${row.id}`;
  return (
    <>
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
        <span class="ws-name">
          <Chip colours={row.colours} />
          {row.name}
        </span>{' '}
        <span class="ws-summary">{row.summary}</span>
      </label>
      <div class="ws-judged" id={`${id}-mark`}>
        {row.mark !== 'open' && <Mark kind={row.mark} />}
        {row.reasons.map((reason) => (
          <p class="ws-reason" key={reason}>
            {reason}
          </p>
        ))}
        {row.minds.length > 0 && (
          <p class="ws-reason">{t('option.minds', { titles: row.minds.join(', ') })}</p>
        )}
      </div>
    </>
  );
}

interface FiguresProps {
  readonly kind: LensChoice;
  readonly row: Row;
  readonly chosen: boolean;
  readonly columns: ReturnType<typeof tellingColumns>;
}

function RowFigures({ kind, row, chosen, columns }: FiguresProps) {
  const { t } = useSheet();
  const { mm, gram, percents, difference } = useFigures();
  const none = t('figure.none');
  const { thickestMm, massG, differenceMinor } = row;
  return (
    <dl class="ws-row-figures">
      {columns.thickest && (
        <RowFigure label={t('option.thickest')} value={thickestMm === null ? none : mm(thickestMm)} />
      )}
      {columns.shares && (
        <RowFigure
          label={t(kind === 'tint' ? 'option.light' : 'option.reflects')}
          value={row.shares.length === 0 ? none : percents(row.shares)}
        />
      )}
      {columns.mass && <RowFigure label={t('option.mass')} value={massG === null ? none : gram(massG)} />}
      <RowFigure
        label={t('option.difference')}
        value={chosen ? t('option.chosen') : (difference(differenceMinor) ?? none)}
      />
    </dl>
  );
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

function RowFigure({ label, value }: { readonly label: string; readonly value: string }) {
  return (
    <div>
      <dt>{label}</dt>
      <dd>{value}</dd>
    </div>
  );
}

/** All options of one kind, each with its mark, reasons, figures and what it changes in the total. */
import { useStore } from '@nanostores/preact';
import { optionRows, type OptionRow as Row } from '../configurator/optionRows.ts';
import type { LensChoice } from '../quote/options.ts';
import { Mark } from './Mark.tsx';
import { idOf, useSheet } from './sheet.ts';
import { useFigures } from './useFigures.ts';

export function OptionList({ kind }: { readonly kind: LensChoice }) {
  const sheet = useSheet();
  const { t, data } = sheet;
  const reports = useStore(sheet.reports)[kind];
  const chosen = useStore(sheet.read).choices[kind];
  return (
    <fieldset class="ws-options">
      <legend>{t(`option.${kind}.legend`)}</legend>
      <p class="ws-lead">{t(`option.${kind}.text`)}</p>
      {optionRows(data, kind, reports).map((row) => (
        <OptionRow key={row.id} kind={kind} row={row} chosen={row.id === chosen} />
      ))}
    </fieldset>
  );
}

interface RowProps {
  readonly kind: LensChoice;
  readonly row: Row;
  readonly chosen: boolean;
}

function OptionRow({ kind, row, chosen }: RowProps) {
  const { t, enter } = useSheet();
  const figures = useFigures();
  const id = `${idOf(kind)}-${row.id}`;
  return (
    <div class="ws-option">
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
        <span class="ws-name">{row.name}</span> <span class="ws-summary">{row.summary}</span>
      </label>
      <div class="ws-judged" id={`${id}-mark`}>
        {row.mark !== 'open' && <Mark kind={row.mark} />}
        {row.reasons.map((reason) => (
          <p class="ws-reason" key={reason}>
            {reason}
          </p>
        ))}
      </div>
      <dl class="ws-row-figures">
        <RowFigure
          label={t('option.thickest')}
          value={row.thickestMm === null ? null : figures.mm(row.thickestMm)}
        />
        <RowFigure label={t('option.mass')} value={row.massG === null ? null : figures.gram(row.massG)} />
        <RowFigure
          label={t('option.difference')}
          value={chosen ? t('option.chosen') : figures.difference(row.differenceMinor)}
        />
      </dl>
    </div>
  );
}

function RowFigure({ label, value }: { readonly label: string; readonly value: string | null }) {
  if (value === null) return null;
  return (
    <div>
      <dt>{label}</dt>
      <dd>{value}</dd>
    </div>
  );
}

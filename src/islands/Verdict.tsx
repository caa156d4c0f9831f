/** The head of the ticket: the verdict, the total, and on a narrow screen the way to the rest. */
import { Leads } from './Findings.tsx';
import { Sign } from './Mark.tsx';
import { STANDING_SIGNS, sentenceOf, totalLabel } from './sentence.ts';
import { useSheet } from './sheet.ts';
import { useFigures } from './useFigures.ts';
import { useStore } from './useStore.ts';

interface Props {
  readonly open: boolean;
  readonly onToggle: () => void;
}

export function Verdict({ open, onToggle }: Props) {
  const sheet = useSheet();
  const { t } = sheet;
  const standing = useStore(sheet.standing, { turn: 'first' });
  const { price } = useStore(sheet.answer, { turn: 'first' });
  const priced = useStore(sheet.priceFaults, { turn: 'first' }).length === 0;
  const figures = useFigures();
  return (
    <div class={`ws-verdict ws-verdict-${standing.kind}`}>
      <p class="ws-sentence">
        <Sign kind={STANDING_SIGNS[standing.kind]} /> {sentenceOf(sheet, standing)}
      </p>
      {priced && (
        <p class="ws-total">
          <span class="ws-total-label">{totalLabel(sheet, standing)}</span> {figures.money(price.total)}
        </p>
      )}
      <Leads />
      <button
        type="button"
        class="ws-toggle"
        aria-expanded={open}
        aria-controls="ws-ticket-body"
        onClick={onToggle}
      >
        {open ? t('ticket.hide') : t('ticket.show')}
      </button>
    </div>
  );
}

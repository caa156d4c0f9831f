/** Every line of the price, and their sum. */
import type { QuoteLine } from '../pricing/line.ts';
import { totalLabel } from './sentence.ts';
import { useSheet } from './sheet.ts';
import { useFigures } from './useFigures.ts';
import { useStore } from './useStore.ts';

export function PriceLines() {
  const sheet = useSheet();
  const { t } = sheet;
  const { lines, total } = useStore(sheet.answer).price;
  const { money } = useFigures();
  const standing = useStore(sheet.standing);
  const sure = standing.kind === 'makeable' || standing.kind === 'care';
  return (
    <>
      <LinesTable
        caption={t('ticket.price')}
        lines={lines}
        totalLabel={totalLabel(sheet, standing)}
        total={money(total)}
        money={money}
      />
      {!sure && <p class="ws-note">{t('ticket.priceOpen')}</p>}
    </>
  );
}

interface Props {
  readonly caption: string;
  readonly lines: readonly QuoteLine[];
  readonly totalLabel: string;
  readonly total: string;
  readonly money: (minor: number) => string;
}

/** Lines with their sum at the foot. */
export function LinesTable({ caption, lines, totalLabel, total, money }: Props) {
  return (
    <table class="ws-price">
      <caption>{caption}</caption>
      <tbody>
        {lines.map(({ label, amount, source, kind, pair }) => (
          <tr key={`${pair} ${kind} ${source} ${label}`}>
            <th scope="row">{label}</th>
            <td>{money(amount)}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">{totalLabel}</th>
          <td>{total}</td>
        </tr>
      </tfoot>
    </table>
  );
}

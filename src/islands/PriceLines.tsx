/** Every line of the price, and their sum. */
import { useStore } from '@nanostores/preact';
import { useSheet } from './sheet.ts';
import { useFigures } from './useFigures.ts';

export function PriceLines() {
  const sheet = useSheet();
  const { t } = sheet;
  const { lines, total } = useStore(sheet.answer).price;
  const { money } = useFigures();
  return (
    <table class="ws-price">
      <caption>{t('ticket.price')}</caption>
      <tbody>
        {lines.map(({ label, amount, source, kind }) => (
          <tr key={`${kind} ${source} ${label}`}>
            <th scope="row">{label}</th>
            <td>{money(amount)}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">{t('ticket.total')}</th>
          <td>{money(total)}</td>
        </tr>
      </tfoot>
    </table>
  );
}

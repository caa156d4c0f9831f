/** The ticket: verdict, findings, the lenses and the price, in reach all the time. */
import { useState } from 'preact/hooks';
import type { Mark } from '../configurator/optionRows.ts';
import type { Standing } from '../configurator/standing.ts';
import { Findings, Leads } from './Findings.tsx';
import { LensFigures } from './LensFigures.tsx';
import { Sign } from './Mark.tsx';
import { PriceLines } from './PriceLines.tsx';
import { sentenceOf, totalLabel } from './sentence.ts';
import { useSheet } from './sheet.ts';
import { useFigures } from './useFigures.ts';
import { useLater } from './useLater.ts';
import { useStore } from './useStore.ts';

const SIGNS: Readonly<Record<Standing['kind'], Mark>> = {
  mend: 'care',
  needs: 'open',
  makeable: 'fits',
  care: 'care',
  refused: 'refused',
};

export function Ticket() {
  const sheet = useSheet();
  const { t, data } = sheet;
  const standing = useStore(sheet.standing);
  const { price } = useStore(sheet.answer);
  const failed = useStore(sheet.engineFailed);
  const figures = useFigures();
  const advice = useStore(sheet.advice);
  const loaded = useLater(() => import('./Advice.tsx'), advice.kind !== 'none');
  const parts = loaded === 'failed' ? null : loaded;
  const status = useLater(() => import('./Status.tsx'), true);
  const acts = useLater(() => import('./keeping/Showing.tsx'), true);
  const [open, setOpen] = useState(false);
  const priced = useStore(sheet.priceFaults).length === 0;
  return (
    <aside
      class={open ? 'ws-ticket ws-open' : 'ws-ticket'}
      id="ws-ticket"
      aria-label={t('ticket.label')}
      tabIndex={-1}
      onFocus={({ target, currentTarget }) => target === currentTarget && setOpen(true)}
    >
      <div class={`ws-verdict ws-verdict-${standing.kind}`}>
        <p class="ws-sentence">
          <Sign kind={SIGNS[standing.kind]} /> {sentenceOf(sheet, standing)}
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
          onClick={() => setOpen(!open)}
        >
          {open ? t('ticket.hide') : t('ticket.show')}
        </button>
      </div>
      {status !== null && status !== 'failed' && <status.Status />}
      <div class="ws-ticket-body" id="ws-ticket-body">
        {failed && <p class="ws-failed">{t('failed', { email: data.shop.contact.email })}</p>}
        {parts && <parts.Applied />}
        {parts && standing.kind === 'refused' && <parts.WayOut state={advice} />}
        {loaded === 'failed' && <p class="ws-note">{t('instead.failed')}</p>}
        <Findings parts={parts} />
        {parts && <parts.Alternatives />}
        {priced ? <PriceLines /> : <p class="ws-note">{t('ticket.noPrice')}</p>}
        <LensFigures />
        {/* As tall as its buttons, before they are there. */}
        <div class="ws-acts">{acts !== null && acts !== 'failed' && <acts.Showing />}</div>
        <p class="ws-note">{t('advice')}</p>
        <p class="ws-note">{t('ticket.safety')}</p>
      </div>
    </aside>
  );
}

/** The ticket below its verdict. Each part is drawn by itself. */
import { Findings } from './Findings.tsx';
import { LensFigures } from './LensFigures.tsx';
import { PriceLines } from './PriceLines.tsx';
import { useSheet } from './sheet.ts';
import { useAdvice } from './useAdvice.ts';
import { useLater } from './useLater.ts';
import { useStore } from './useStore.ts';

export function TicketBody() {
  const { t } = useSheet();
  return (
    <div class="ws-ticket-body" id="ws-ticket-body">
      <Failed />
      <Instead />
      <Findings />
      <Better />
      <Price />
      <LensFigures />
      <Acts />
      <p class="ws-note">{t('advice')}</p>
      <p class="ws-note">{t('ticket.safety')}</p>
    </div>
  );
}

function Failed() {
  const { t, data, engineFailed } = useSheet();
  return useStore(engineFailed) ? (
    <p class="ws-failed">{t('failed', { email: data.shop.contact.email })}</p>
  ) : null;
}

/** What was changed last, and the way out of a refusal. */
function Instead() {
  const { t, advice, standing } = useSheet();
  const state = useStore(advice);
  const parts = useAdvice();
  const refused = useStore(standing).kind === 'refused';
  if (parts === 'failed') return <p class="ws-note">{t('instead.failed')}</p>;
  return (
    parts && (
      <>
        <parts.Applied />
        {refused && <parts.WayOut state={state} />}
      </>
    )
  );
}

function Better() {
  const parts = useAdvice();
  return parts !== null && parts !== 'failed' ? <parts.Alternatives /> : null;
}

function Price() {
  const { t, priceFaults } = useSheet();
  return useStore(priceFaults).length === 0 ? <PriceLines /> : <p class="ws-note">{t('ticket.noPrice')}</p>;
}

/** As tall as its buttons, before they are there. */
function Acts() {
  const acts = useLater(() => import('./keeping/Showing.tsx'), true);
  return <div class="ws-acts">{acts !== null && acts !== 'failed' && <acts.Showing />}</div>;
}

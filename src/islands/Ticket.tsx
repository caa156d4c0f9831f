/** The ticket: verdict, findings, the lenses and the price, in reach all the time. */
import { useMemo, useState } from 'preact/hooks';
import { useSheet } from './sheet.ts';
import { TicketBody } from './TicketBody.tsx';
import { useLater } from './useLater.ts';
import { Verdict } from './Verdict.tsx';

export function Ticket() {
  const { t } = useSheet();
  const status = useLater(() => import('./Status.tsx'), true);
  const [open, setOpen] = useState(false);
  // Not drawn again as it opens.
  const body = useMemo(() => <TicketBody />, []);
  return (
    <aside
      class={open ? 'ws-ticket ws-open' : 'ws-ticket'}
      id="ws-ticket"
      aria-label={t('ticket.label')}
      tabIndex={-1}
      onFocus={({ target, currentTarget }) => target === currentTarget && setOpen(true)}
    >
      <Verdict open={open} onToggle={() => setOpen(!open)} />
      {status !== null && status !== 'failed' && <status.Status />}
      {body}
    </aside>
  );
}

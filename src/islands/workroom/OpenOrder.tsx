/** One order, open: where it comes from, what is checked, where it stands, its pairs, its papers. */
import { useEffect, useRef } from 'preact/hooks';
import { lensOrder } from '../../workroom/lensOrder.ts';
import { lensRecordText } from '../../workroom/lensRecord.ts';
import { useStore } from '../useStore.ts';
import type { Draft } from './benchState.ts';
import { Confirm } from './Confirm.tsx';
import type { Held } from './held.ts';
import { Inspect } from './Inspect.tsx';
import { pairDraft, readMeasured } from './measuring.ts';
import { Papers } from './Papers.tsx';
import { Steps } from './Steps.tsx';
import { saveFile } from './saveFile.ts';
import { useBench } from './useBench.ts';
import { Verify } from './Verify.tsx';

export function OpenOrder({ held }: { readonly held: Held }) {
  const bench = useBench();
  const { t } = bench;
  const head = useRef<HTMLHeadingElement>(null);
  // Who chose it from the list goes on here.
  useEffect(() => head.current?.focus(), []);
  const looked = bench.lookAt(held);
  const lines = bench.offer.workroom.alignment.length;
  const { pairs } = looked.opened;
  const today = pairs.map((_, at) => [`${at}.on`, bench.today()]);
  useStore(bench.drafts);
  const now = (): Draft => ({ ...Object.fromEntries(today), ...bench.drafts.get()[held.id] });
  const draft = now();
  const measured = pairs.map((judged, at) =>
    judged === null ? null : readMeasured(judged, pairDraft(draft, at), lines).measured,
  );
  const entering = {
    draft,
    typed: (field: string) => now()[field] ?? '',
    enter: (field: string, text: string) => bench.enter(held.id, field, text),
  };
  return (
    <article class="wr-order" aria-labelledby="wr-order">
      <header class="wr-part">
        <h2 id="wr-order" ref={head} tabIndex={-1}>
          {t('order.title', { number: held.shown })}
        </h2>
        <p>{held.names.join(', ')}</p>
        <p class="ws-note">
          {t('order.dated', { day: bench.day(held.job.date), digest: held.digest.slice(0, 16) })}
        </p>
        {held.provenance.length > 0 && (
          <ul class="wr-cautions">
            {held.provenance.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        )}
        {held.job.order.notes !== '' && (
          <p class="wr-notes">
            <b>{t('order.note')}</b> {held.job.order.notes}
          </p>
        )}
        <Attachments held={held} />
        <div class="wr-row">
          {pairs.map(
            (judged, at) =>
              judged !== null && (
                <button
                  key={at}
                  class="ws-button"
                  type="button"
                  onClick={() =>
                    saveFile(
                      `lenses-${held.shown}-${at + 1}.txt`,
                      lensRecordText(held.job.number, judged, lensOrder(judged, bench.offer)),
                      'text/plain',
                    )
                  }
                >
                  {t('order.record', { pair: at + 1 })}
                </button>
              ),
          )}
          <Confirm
            label={t('order.delete')}
            question={t('order.sure', { number: held.shown })}
            yes={t('order.yes')}
            onYes={() => void bench.forget(held.job.number)}
          />
        </div>
      </header>
      <Verify checked={looked.checked} buyer={held.job.order.buyer} />
      <Steps number={held.job.number} />
      {pairs.map((judged, at) =>
        judged === null ? (
          <p key={at} class="wr-part ws-fault">
            {t('order.unreadable', { pair: at + 1 })}
          </p>
        ) : (
          <Inspect
            key={at}
            judged={judged}
            at={at}
            count={pairs.length}
            {...entering}
            write={(all) => bench.write(held.id, all)}
          />
        ),
      )}
      <Papers held={held} measured={measured} {...entering} />
    </article>
  );
}

function Attachments({ held: { attachments, shown } }: { readonly held: Held }) {
  const { t, orders } = useBench();
  if (attachments.length === 0) return null;
  return (
    <div class="wr-row">
      {attachments.map(({ pair, type, base64 }, at) => (
        <button
          key={at}
          class="ws-button"
          type="button"
          onClick={() => {
            const bytes = orders.fromBase64(base64);
            const name = `prescription-${shown}-${pair + 1}-${at + 1}.${orders.attachmentEnds[type]}`;
            if (bytes !== null) saveFile(name, new Uint8Array(bytes), type);
          }}
        >
          {t('order.attachment', { pair: pair + 1, type: orders.attachmentEnds[type].toUpperCase() })}
        </button>
      ))}
    </div>
  );
}

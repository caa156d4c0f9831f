/** The papers of an order: what goes on them, a list of them, and the chosen one as it prints. */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { MeasuredPair } from '../../workroom/inspection/measured.ts';
import type { PaperOptions } from '../../workroom/papers/context.ts';
import { papersOf, printable } from '../../workroom/papers.ts';
import type { Entering } from './Entry.tsx';
import type { Held } from './held.ts';
import { PaperFields } from './PaperFields.tsx';
import { readPaperEntries } from './paperEntries.ts';
import { saveFile } from './saveFile.ts';
import { useBench } from './useBench.ts';

interface Props extends Entering {
  readonly held: Held;
  readonly measured: readonly (MeasuredPair | null)[];
}

/** A paper on show is made again once typing pauses, ms. */
const PAUSE_MS = 300;

export function Papers({ held, measured, draft, typed, enter }: Props) {
  const bench = useBench();
  const { t, offer } = bench;
  const { currencyDigits, language, name } = offer.shop;
  const state = JSON.stringify(draft);
  const { options, wrong } = useMemo(() => readPaperEntries(draft, measured, currencyDigits), [state]);
  const settled = useSettled(options);
  const papers = useMemo(() => papersOf(held.job, offer), [held]);
  const [shown, setShown] = useState<string | null>(null);
  const [wanted, setWanted] = useState<{ readonly html: string; readonly turn: number } | null>(null);
  const page = (id: string | null, entered: PaperOptions) => {
    const all = papersOf(held.job, offer, entered);
    const some = id === null ? all : all.filter((one) => one.id === id);
    return printable(some, `${held.shown} ${name}`, language);
  };
  const preview = useMemo(() => (shown === null ? '' : page(shown, settled)), [held, shown, settled]);
  const print = (id: string | null) => {
    const html = page(id, options);
    setWanted((before) => ({ html, turn: (before?.turn ?? 0) + 1 }));
  };
  const several = papers.filter(({ id }) => id.endsWith('-1')).length > 0;
  const titleOf = (id: string, title: string) => {
    const pair = /-(\d+)$/.exec(id)?.[1];
    return several && pair !== undefined ? t('papers.ofPair', { pair, what: title }) : title;
  };
  return (
    <section class="wr-part" aria-labelledby="wr-papers">
      <h3 id="wr-papers" class="ws-head">
        {t('papers.title')}
      </h3>
      <PaperFields {...{ draft, typed, enter, wrong }} count={measured.length} />
      <ul class="wr-papers">
        {papers.map(({ id, title }) => (
          <li key={id}>
            <span id={`wr-paper-${id}`}>{titleOf(id, title)}</span>
            <button
              class="ws-button"
              type="button"
              aria-pressed={shown === id}
              aria-label={t('papers.showOf', { paper: titleOf(id, title) })}
              onClick={() => setShown(shown === id ? null : id)}
            >
              {t('papers.show')}
            </button>
            <button
              class="ws-button"
              type="button"
              aria-label={t('papers.printOf', { paper: titleOf(id, title) })}
              onClick={() => print(id)}
            >
              {t('papers.print')}
            </button>
          </li>
        ))}
      </ul>
      <div class="wr-row">
        <button class="ws-button" type="button" onClick={() => print(null)}>
          {t('papers.printAll')}
        </button>
        <button
          class="ws-button"
          type="button"
          onClick={() => saveFile(`papers-${held.shown}.html`, page(null, options), 'text/html')}
        >
          {t('papers.save')}
        </button>
      </div>
      {shown !== null && (
        // A new frame each time: one that is given other text adds a step to the way back.
        <iframe key={preview} class="wr-paper" title={t('papers.preview')} sandbox="" srcdoc={preview} />
      )}
      {wanted !== null && <Printed key={wanted.turn} html={wanted.html} done={() => setWanted(null)} />}
    </section>
  );
}

/** The value once it has stayed the same for a moment. */
function useSettled<T>(value: T): T {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), PAUSE_MS);
    return () => clearTimeout(timer);
  }, [value]);
  return settled;
}

/** Papers in a frame out of sight, printed as soon as they stand there. No script runs in it. */
function Printed({ html, done }: { readonly html: string; readonly done: () => void }) {
  const { t } = useBench();
  const frame = useRef<HTMLIFrameElement>(null);
  const onLoad = () => {
    const inside = frame.current?.contentWindow;
    inside?.addEventListener('afterprint', done);
    inside?.focus();
    inside?.print();
  };
  return (
    <iframe
      ref={frame}
      class="wr-printed"
      title={t('papers.printing')}
      sandbox="allow-same-origin allow-modals"
      srcdoc={html}
      onLoad={onLoad}
    />
  );
}

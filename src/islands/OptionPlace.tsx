/**
 * The place of a list of options. The list stays as the page was built with it until it comes near the window or
 * something is entered; only then its script is loaded and brings it to life.
 */
import { h, hydrate, render } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Worksheet } from '../configurator/worksheet.ts';
import type { ReportedChoice } from '../quote/options.ts';
import { Sheet, useSheet } from './sheet.ts';

export interface ListProps {
  readonly kind: ReportedChoice;
}

const AS_BUILT = { __html: '' };

export function OptionPlace({ kind }: ListProps) {
  const sheet = useSheet();
  const place = useRef<HTMLDivElement>(null);
  const [isTouched] = useState(() => touchWatch(sheet));
  useEffect(() => {
    const root = place.current as HTMLDivElement;
    const waiting = new AbortController();
    const { signal } = waiting;
    const bringToLife = async () => {
      const { OptionList } = await import('./OptionList.tsx');
      waiting.abort();
      const list = h(Sheet.Provider, { value: sheet }, h(OptionList, { kind }));
      if (isTouched()) render(list, root);
      else hydrate(list, root);
      pressed?.click();
    };
    let woken = false;
    const wake = () => {
      if (!woken) bringToLife().catch((error) => console.error(error));
      woken = true;
    };
    // A choice counts, and a button that was pressed is pressed again, whenever the script comes.
    let pressed: HTMLElement | null = null;
    root.addEventListener('change', () => sheet.enter(kind, checkedIn(root)), { signal });
    root.addEventListener(
      'click',
      ({ target }) => {
        if (target instanceof HTMLButtonElement) pressed = target;
      },
      { signal },
    );
    const near = new IntersectionObserver((seen) => seen.some((one) => one.isIntersecting) && wake(), {
      rootMargin: '100%',
    });
    near.observe(root);
    const ends = [() => near.disconnect(), sheet.entries.listen(wake), sheet.reports.listen(wake)];
    signal.addEventListener('abort', () => {
      for (const end of ends) end();
    });
    if (isTouched()) wake();
  }, []);
  return <div class="ws-place" ref={place} dangerouslySetInnerHTML={AS_BUILT} />;
}

const checkedIn = (root: Element) => root.querySelector<HTMLInputElement>(':checked')?.value ?? '';

/** Tells from now on whether anything differs from how the page was built. */
function touchWatch({ entries, reports }: Worksheet): () => boolean {
  const built = [entries.get(), reports.get()];
  return () => entries.get() !== built[0] || reports.get() !== built[1];
}

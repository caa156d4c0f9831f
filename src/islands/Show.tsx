/** The place of the drawings. What draws them is loaded, and the engine begun, once somebody can see it. */
import { useEffect, useRef } from 'preact/hooks';
import { useSheet } from './sheet.ts';
import { useLater } from './useLater.ts';
import { useStore } from './useStore.ts';

export function Show() {
  const { t, drawing } = useSheet();
  const place = useRef<HTMLElement>(null);
  const seen = useStore(drawing);
  const part = useLater(() => import('./Shown.tsx'), seen);
  useEffect(() => {
    if (place.current === null) return;
    const watch = new IntersectionObserver((all) => {
      if (!all.some(({ isIntersecting }) => isIntersecting)) return;
      watch.disconnect();
      drawing.set(true);
    });
    watch.observe(place.current);
    return () => watch.disconnect();
  }, []);
  return (
    <section class="ws-show" aria-label={t('shown.legend')} ref={place}>
      {part === 'failed' ? (
        <p class="ws-note">{t('shown.failed')}</p>
      ) : part === null ? (
        <p class="ws-note">{t('shown.loading')}</p>
      ) : (
        <part.Shown />
      )}
    </section>
  );
}

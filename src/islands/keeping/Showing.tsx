/** What can be done with the pair on the ticket: basket, comparison, link. Each part is loaded when it is asked for. */
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { type Slots, say } from '../../catalogue/words.ts';
import { useSheet } from '../sheet.ts';
import { useStore } from '../useStore.ts';
import type { acts } from './acts.tsx';
import { asideCount, isAnythingHeld, openedPair } from './heldState.ts';
import { keepInView } from './keepInView.ts';
import { whenTyped } from './whenTyped.ts';

type Act = keyof typeof acts;

export function Showing() {
  const sheet = useSheet();
  const t = (key: string, slots?: Slots) => say(sheet.data.words, `showing.${key}`, slots);
  const aside = useStore(asideCount);
  const opened = useStore(openedPair);
  const { kind } = useStore(sheet.standing);
  const name = kind === 'refused' ? 'putRefused' : kind === 'mend' || kind === 'needs' ? 'putOpen' : 'put';
  const [told, setTold] = useState<ComponentChildren>(null);
  const act = async (name: Act) => {
    try {
      setTold(await (await import('./acts.tsx')).acts[name](sheet));
    } catch (error) {
      console.error(error);
      setTold(t('failed'));
    }
  };
  useEffect(() => {
    if (isAnythingHeld()) void act('count');
    keepInView();
    return whenTyped(sheet, async () => (await import('./mindLeaving.ts')).mindLeaving(sheet));
  }, []);
  const button = (name: Act, label: string) => (
    <button type="button" class="ws-button" onClick={() => void act(name)}>
      {label}
    </button>
  );
  return (
    <section class="sh" aria-labelledby="sh-legend">
      <h3 id="sh-legend" class="ws-head">
        {t('legend')}
      </h3>
      <div class="sh-acts">
        {opened === null ? (
          button('put', t(name))
        ) : (
          <>
            {button('putBack', t('putBack', { number: opened.number }))}
            {button('put', t('putAnother'))}
          </>
        )}
        {button('setAside', t('aside'))}
        {button('compare', aside === 0 ? t('compare') : t('compareCount', { count: aside }))}
        {button('link', t('link'))}
      </div>
      <div class="sh-told" role="status">
        {told}
      </div>
      {name !== 'put' && <p class="ws-note">{t('open')}</p>}
      <p class="ws-note">{t('note')}</p>
    </section>
  );
}

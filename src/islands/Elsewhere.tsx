/** Links to the frame that advice leads to: with the choices alone, and with all that was entered where one says so. */
import { pageHref } from '../catalogue/languages.ts';
import { entriesElsewhere } from '../configurator/changing.ts';
import { writeLink } from '../configurator/keeping/link.ts';
import type { PackageChange } from '../quote/change.ts';
import { askBeforeLeaving } from './askBeforeLeaving.ts';
import { useSheet } from './sheet.ts';
import { useStore } from './useStore.ts';

interface Props {
  readonly changes: readonly PackageChange[];
  readonly frame: string;
  readonly names: string;
}

export function Elsewhere({ changes, frame, names }: Props) {
  const { t, data, kept, entries, read } = useSheet();
  const keeps = useStore(kept);
  /** Fills the fragment for this press alone: no copied address has anything of it. */
  const press = (withPrescription: boolean) => (event: MouseEvent) => {
    const { currentTarget: link, button } = event;
    if (!(link instanceof HTMLAnchorElement) || button > 1) return;
    const going = entriesElsewhere(entries.get(), read.get().choices, changes);
    link.hash = writeLink({ entries: going }, withPrescription);
    setTimeout(() => {
      link.hash = '';
    });
    if (!withPrescription || button > 0 || event.ctrlKey || event.metaKey || event.shiftKey) return;
    // Nothing is lost that goes along; on coming back there is again.
    askBeforeLeaving(false);
    addEventListener('pageshow', () => askBeforeLeaving(true), { once: true });
  };
  const link = (text: string, withPrescription: boolean) => (
    <a
      class="ws-take"
      href={pageHref(data.shop, `/frames/${frame}/`)}
      onClick={press(withPrescription)}
      onAuxClick={press(withPrescription)}
    >
      {text}
    </a>
  );
  // What is kept on this device is there on every frame's page anyway.
  if (keeps) return link(t('instead.go', { names }), false);
  return (
    <>
      {link(t('instead.goWith', { names }), true)}
      {link(t('instead.go', { names }), false)}
      <span class="ws-note">{t('instead.carries')}</span>
    </>
  );
}
